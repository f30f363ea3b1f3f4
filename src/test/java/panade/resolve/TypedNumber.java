package panade.resolve;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.StringNode;

/**
 * A number of the documents that a result points at: which kitchen comes of typing another.
 *
 * @param pointers members of the brief that are typed together
 */
record TypedNumber(TypedKitchen kitchen, List<String> pointers) {

    /** The number behind a result's path; empty where it stands in no brief. */
    static Optional<TypedNumber> at(TypedKitchen kitchen, String path) {
        var found = new ArrayList<String>();
        for (var pointer : List.of(path, path + "/min", path + "/max")) {
            var node = kitchen.brief().at(pointer);
            if (node.isValueNode() && (path.startsWith("/bounds/") || path.startsWith("/stages/"))) {
                found.add(pointer);
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(new TypedNumber(kitchen, found));
    }

    private JsonNode node() {
        return kitchen.brief().at(pointers.get(0));
    }

    /** The number as typed, in its unit. */
    BigFraction value() {
        return PlainReading.of(node().isNumber() ? node().decimalValue() : TypedKitchen.number(node()));
    }

    TypedKitchen typed(BigDecimal number) {
        var unit = node().isNumber()
                ? ""
                : node().asString().substring(node().asString().indexOf(' '));
        var plain = number.scale() < 0 ? number.setScale(0) : number;
        var value = unit.isEmpty() ? DecimalNode.valueOf(plain) : StringNode.valueOf(plain.toPlainString() + unit);
        var changed = kitchen;
        for (var pointer : pointers) {
            changed = changed.typed(pointer, value);
        }
        return changed;
    }

    TypedKitchen removed() {
        var changed = kitchen;
        for (var pointer : pointers) {
            changed = changed.typed(pointer, null);
        }
        return changed;
    }
}
