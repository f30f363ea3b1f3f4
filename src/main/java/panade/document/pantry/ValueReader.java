package panade.document.pantry;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Expect;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Problems;
import panade.domain.pantry.Property;

/** Reads numbers by property name, each in its property's own unit. */
final class ValueReader {
    private final Traits traits;
    private final Problems problems;
    private final Expect expect;

    ValueReader(Traits traits, Problems problems) {
        this.traits = traits;
        this.problems = problems;
        this.expect = new Expect(problems);
    }

    /** The numbers of a field that need not be there. */
    Map<String, BigFraction> read(Optional<Node> node, String field) {
        return node.flatMap(found -> expect.object(found, "values by name, \"" + field + "\": {\"FAT\": 5}"))
                .map(object -> read(object, false))
                .orElse(Map.of());
    }

    /** Standard deviations, which are never negative. */
    Map<String, BigFraction> readSpread(Optional<Node> node) {
        return node.flatMap(found -> expect.object(found, "standard deviations by name, \"spread\": {\"PROCNT\": 1.5}"))
                .map(object -> read(object, true))
                .orElse(Map.of());
    }

    private Map<String, BigFraction> read(ObjectNode object, boolean neverNegative) {
        var values = new LinkedHashMap<String, BigFraction>();
        for (var field : object.fields()) {
            var property = traits.find(field.nameOrigin(), field.name(), problems);
            var number = number(field, property);
            property.ifPresent(known -> number.filter(found -> isPossible(found, known, neverNegative))
                    .ifPresent(found -> values.put(known.id(), found.value())));
        }
        return values;
    }

    private Optional<NumberNode> number(Field field, Optional<Property> property) {
        var symbol = property.map(known -> known.unit().symbol()).orElse("");
        var unit = symbol.isEmpty() ? "" : " in " + symbol;
        return expect.number(field.value(), "a bare number" + unit + ", such as \"" + field.name() + "\": 5");
    }

    // What is in a food is never less than nothing; a trait such as a charge may be.
    private boolean isPossible(NumberNode number, Property property, boolean neverNegative) {
        boolean atLeastZero = neverNegative || Tagnames.contains(property.id());
        boolean possible = !atLeastZero || number.value().signum() >= 0;
        if (!possible) {
            problems.add(
                    number.origin(),
                    "\"" + number.spelling() + "\" is below zero",
                    "Expected 0 or more for " + property.id() + ".");
        }
        return possible;
    }
}
