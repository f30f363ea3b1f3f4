package panade.document.pantry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.pantry.Labelling;
import panade.quantity.Quantity;

/** Reads what a label needs to know of an ingredient beside its composition. */
final class LabellingReader {
    private static final String PARTS =
            "what it is made of, heaviest first, such as [\"water\", \"soybeans\", \"salt\"]";
    private static final String FACTORS = "kcal per gram by tagname, such as {\"PROCNT\": 3.47, \"FAT\": 8.37}";
    private static final String DIGESTED = "shares by tagname, such as {\"PROCNT\": \"94 %\", \"LYS\": \"91 %\"}";

    private final Traits traits;
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    LabellingReader(Traits traits, Problems problems) {
        this.traits = traits;
        this.problems = problems;
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
    }

    Labelling read(Fields ingredient) {
        return new Labelling(
                ingredient.get("madeOf").map(this::parts).orElse(null),
                byTagname(ingredient.get("energyFactors"), FACTORS, this::factor),
                byTagname(ingredient.get("digestibility"), DIGESTED, this::digested),
                new LabelMarksReader(problems).read(ingredient));
    }

    private List<String> parts(Node node) {
        return expect.texts(node, PARTS).stream().map(TextNode::text).toList();
    }

    /** Reads one value. */
    private interface ValueOf {
        Optional<BigFraction> read(Node node);
    }

    private Map<String, BigFraction> byTagname(Optional<Node> node, String expected, ValueOf value) {
        var values = new LinkedHashMap<String, BigFraction>();
        node.flatMap(found -> expect.object(found, expected))
                .map(ObjectNode::fields)
                .orElse(List.of())
                .forEach(field -> put(values, field, value));
        return values;
    }

    private void put(Map<String, BigFraction> values, Field field, ValueOf value) {
        traits.find(field.nameOrigin(), field.name(), problems)
                .flatMap(property -> value.read(field.value()))
                .ifPresent(number -> values.put(field.name(), number));
    }

    private Optional<BigFraction> factor(Node node) {
        return amounts.notNegative(node, "kcal per gram as a bare number, such as 3.47");
    }

    private Optional<BigFraction> digested(Node node) {
        return amounts.share(node, "94 %").map(Quantity::base);
    }
}
