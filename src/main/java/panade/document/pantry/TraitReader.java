package panade.document.pantry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Ids;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.pantry.Property;
import panade.quantity.Unit;

/** Reads the traits an ingredient set declares, and adds them to the INFOODS components. */
final class TraitReader {
    private static final String[] FIELDS = {"unit", "title", "absent", "sum"};
    private static final String SUM = "weights by name, such as \"sum\": {\"PROCNT\": 4, \"FAT\": 9}";
    private static final Optional<Node> NOTHING = Optional.empty();

    private final Problems problems;
    private final Expect expect;
    private final Map<String, ObjectNode> sums = new LinkedHashMap<>();

    TraitReader(Problems problems) {
        this.problems = problems;
        this.expect = new Expect(problems);
    }

    /** All properties of the set. */
    Traits read(Optional<Node> node) {
        var declared = node.flatMap(found ->
                expect.object(found, "traits by name, such as {\"bite\": {\"title\": \"chew score, 0 to 10\"}}"));
        var properties = Tagnames.all();
        declared.map(ObjectNode::fields).orElse(List.of()).forEach(field -> {
            new Ids(problems).check(field.nameOrigin(), field.name(), "trait");
            properties.put(field.name(), trait(field));
        });
        var traits = new Traits(properties, declared.isPresent() == node.isPresent());
        new SumChecks(traits, sums, problems).check();
        return traits;
    }

    private Property trait(Field field) {
        var object =
                expect.object(field.value(), "a trait, such as {\"unit\": \"g/g\", \"title\": \"water it holds\"}");
        var fields = object.map(found -> new Fields(found, problems, FIELDS));
        var tagname = Optional.ofNullable(Tagnames.all().get(field.name()));
        var sum = sum(field.name(), value(fields, "sum"));
        return new Property(
                field.name(),
                text(value(fields, "title"), "a text, such as \"chew score, 0 to 10\"")
                        .map(TextNode::text)
                        .or(() -> tagname.map(Property::title))
                        .orElse(field.name()),
                unit(value(fields, "unit"), tagname),
                tagname.isPresent() && sum.isEmpty(),
                absent(field.name(), value(fields, "absent")).orElse(null),
                sum);
    }

    private static Optional<Node> value(Optional<Fields> fields, String name) {
        return fields.map(found -> found.get(name)).orElse(NOTHING);
    }

    private Optional<TextNode> text(Optional<Node> node, String expected) {
        return node.flatMap(found -> expect.text(found, expected));
    }

    private Unit unit(Optional<Node> node, Optional<Property> tagname) {
        var text = text(node, "the trait's unit in quotes, such as \"g/g\"; leave it out for a score");
        var own = tagname.map(Property::unit);
        var stated = text.map(found -> Unit.declared(found.text().strip()));
        if (own.isPresent() && stated.isPresent() && !isTheSame(own.get(), stated.get())) {
            problems.add(
                    text.get().origin(),
                    "\"" + text.get().text() + "\" is not the unit of this INFOODS component",
                    "Expected \"" + own.get().symbol() + "\", or a trait with a name of its own.");
        }
        return own.or(() -> stated).orElse(Unit.NUMBER);
    }

    private static boolean isTheSame(Unit one, Unit other) {
        return one.measuresLike(other) && one.factor().equals(other.factor());
    }

    private Optional<BigFraction> absent(String name, Optional<Node> node) {
        var number = node.flatMap(found -> expect.number(found, "a bare number, such as \"absent\": 0"));
        return number.filter(found -> isPossible(name, found)).map(NumberNode::value);
    }

    private boolean isPossible(String name, NumberNode number) {
        boolean possible = !Tagnames.contains(name) || number.value().signum() >= 0;
        if (!possible) {
            problems.add(
                    number.origin(),
                    "\"" + number.spelling() + "\" is below zero",
                    "Expected 0 or more for " + name + ".");
        }
        return possible;
    }

    private Map<String, BigFraction> sum(String name, Optional<Node> node) {
        var object = node.flatMap(found -> expect.object(found, SUM));
        var weights = new LinkedHashMap<String, BigFraction>();
        object.ifPresent(found -> {
            sums.put(name, found);
            found.fields()
                    .forEach(part -> expect.number(part.value(), "a bare number to multiply by, such as 4")
                            .ifPresent(weight -> weights.put(part.name(), weight.value())));
            tellIfEmpty(found);
        });
        return weights;
    }

    private void tellIfEmpty(ObjectNode sum) {
        if (sum.fields().isEmpty()) {
            problems.add(sum.origin(), "This sum has no parts", "Expected " + SUM + ".");
        }
    }
}
