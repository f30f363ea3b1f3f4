package panade.document.pantry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Ids;
import panade.document.syntax.Node;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.domain.pantry.AllergenWords;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.StrangeAllergen;
import panade.quantity.Quantity;

/** Reads one ingredient. */
final class IngredientReader {
    /** An ingredient with what the checks across the set must point at. */
    record Draft(Ingredient ingredient, Origin idOrigin, Optional<TextNode> variantOf) {}

    private static final String[] FIELDS = {
        "id",
        "name",
        "label",
        "kinds",
        "values",
        "others",
        "spread",
        "allergens",
        "maxUse",
        "usable",
        "variantOf",
        "madeOf",
        "labelIn",
        "additive",
        "fibre",
        "colours",
        "energyFactors",
        "digestibility",
        "source",
        "note"
    };

    private static final Pattern SALT = Pattern.compile("(?i)(?<![\\p{L}])salt(?![\\p{L}])");

    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;
    private final ValueReader values;
    private final LabellingReader labelling;

    IngredientReader(Traits traits, Problems problems) {
        this.problems = problems;
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
        this.values = new ValueReader(traits, problems);
        this.labelling = new LabellingReader(traits, problems);
    }

    /** The ingredient, without whatever was told about it; empty when there is nothing to call it by. */
    Optional<Draft> read(ObjectNode object) {
        var fields = new Fields(object, problems, FIELDS);
        var id = fields.required("id", "a name to call the ingredient by, such as \"id\": \"water\"")
                .flatMap(node -> expect.text(node, "a name in quotes, such as \"id\": \"water\""));
        id.ifPresent(text -> new Ids(problems).check(text.origin(), text.text(), "ingredient"));
        var composition = composition(fields);
        var variantOf = text(fields, "variantOf");
        var ingredient = ingredient(object, fields, id.map(TextNode::text).orElse(""), composition, variantOf);
        return id.map(text -> new Draft(ingredient, text.origin(), variantOf));
    }

    private Ingredient ingredient(
            ObjectNode object,
            Fields fields,
            String id,
            Map<String, BigFraction> composition,
            Optional<TextNode> variantOf) {
        text(fields, "source");
        var name = text(fields, "name").map(TextNode::text).orElse(id);
        return new Ingredient(
                id,
                name,
                text(fields, "label").map(TextNode::text).orElse(name),
                texts(fields, "kinds", "protein").orElse(Set.of()),
                composition,
                othersAreZero(fields),
                values.readSpread(fields.get("spread")),
                fields.get("allergens").map(node -> allergens(id, node)).orElse(null),
                maxUse(fields),
                usable(fields),
                variantOf.map(TextNode::text).orElse(null),
                text(fields, "note").map(TextNode::text).orElse(""),
                labelling.read(fields),
                object.origin());
    }

    private Map<String, BigFraction> composition(Fields fields) {
        var node = fields.required("values", "what 100 g of it hold, \"values\": {\"WATER\": 8, \"PROCNT\": 65}");
        var stated = values.read(node, "values");
        node.filter(ObjectNode.class::isInstance)
                .map(ObjectNode.class::cast)
                .ifPresent(found -> check(found, stated, fields));
        return stated;
    }

    private void check(ObjectNode node, Map<String, BigFraction> stated, Fields fields) {
        new CompositionChecks(node, stated, problems).check();
        var remarks = new CompositionRemarks(node, stated, problems);
        remarks.checkSodium();
        if (Stream.of("id", "name", "label").anyMatch(name -> isCalledSalt(fields.get(name)))) {
            remarks.checkSalt();
        }
        if (fields.get("others").isPresent()) {
            remarks.checkLeftOpen();
        }
    }

    private static boolean isCalledSalt(Optional<Node> name) {
        return name.filter(TextNode.class::isInstance)
                .map(node -> ((TextNode) node).text())
                .filter(text -> SALT.matcher(text).find())
                .isPresent();
    }

    private boolean othersAreZero(Fields fields) {
        var expected = "0, or nothing where the other components are not known";
        var number = fields.get("others").flatMap(node -> expect.number(node, expected));
        number.filter(found -> found.value().signum() != 0).ifPresent(found -> tellNotZero(found, expected));
        return number.isPresent();
    }

    private void tellNotZero(NumberNode number, String expected) {
        problems.add(
                number.origin(),
                "\"" + number.spelling() + "\" cannot stand for all other components",
                "Expected " + expected + ".");
    }

    private @Nullable Quantity maxUse(Fields fields) {
        return fields.get("maxUse").flatMap(node -> amounts.share(node, "35 %")).orElse(null);
    }

    private BigFraction usable(Fields fields) {
        var share = fields.get("usable").flatMap(node -> amounts.share(node, "98 %"));
        share.filter(found -> found.base().signum() == 0)
                .ifPresent(found -> problems.add(
                        fields.get("usable").orElseThrow().origin(),
                        "\"" + found.text() + "\" leaves nothing to use",
                        "Expected what is left after trimming, above 0 %, such as \"98 %\"."));
        return share.map(Quantity::base).filter(base -> base.signum() > 0).orElse(BigFraction.ONE);
    }

    private Optional<TextNode> text(Fields fields, String name) {
        return fields.get(name).flatMap(node -> expect.text(node, "a text in quotes"));
    }

    private Set<String> allergens(String id, Node node) {
        var words = new LinkedHashSet<String>();
        var texts = expect.texts(node, "a list of texts, such as [\"soy\"]");
        for (var text : texts) {
            var all = AllergenWords.read(text.text());
            // None, and something beside it: one of the two is wrong.
            var read = all.isEmpty() && texts.size() > 1 ? List.of(text.text()) : all;
            words.addAll(read);
            AllergenWords.unknown(Set.copyOf(read)).stream()
                    .map(word -> new StrangeAllergen(text.origin(), id, word))
                    .forEach(strange -> problems.remark(text.origin(), strange.what() + ". " + strange.advice()));
        }
        return words;
    }

    private Optional<Set<String>> texts(Fields fields, String name, String example) {
        var form = "a list of texts, such as [\"" + example + "\"]";
        return fields.get(name).map(node -> {
            var texts = new LinkedHashSet<String>();
            expect.texts(node, form).forEach(text -> texts.add(text.text()));
            return texts;
        });
    }
}
