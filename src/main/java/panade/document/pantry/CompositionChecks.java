package panade.document.pantry;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Problems;
import panade.quantity.Decimal;

/** Checks that what an ingredient is said to hold fits into it: no more than the whole, no part above its whole. */
record CompositionChecks(ObjectNode node, Map<String, BigFraction> values, Problems problems) {
    // 100 g, and 1 g for rounding: food tables round every component by itself.
    private static final BigFraction MAX_GRAMS = BigFraction.of(101);
    private static final List<String> ALWAYS = List.of("WATER", "PROCNT", "FAT", "ASH");
    private static final int DIGITS = 12;

    void check() {
        checkTotal();
        checkPart("FASAT", "FAT");
        checkPart("FATRN", "FAT");
        checkPart("SUGAR", "CHOAVL");
        checkPart("SUGAD", "SUGAR");
        checkPart("SUGAR", "CHOCDF");
        checkPart("FIBTG", "CHOCDF");
        checkPart("STARCH", "CHOCDF");
        checkParts("FAT", "FASAT", "FAMS", "FAPU", "FATRN");
        checkParts("CHOCDF", "CHOAVL", "FIBTG");
        checkParts("CHOCDF", "SUGAR", "FIBTG");
    }

    private void checkTotal() {
        // The total of carbohydrates, where it is stated, already contains the other two.
        var carbohydrates = values.containsKey("CHOCDF") ? List.of("CHOCDF") : List.of("CHOAVL", "FIBTG");
        var total = sum(ALWAYS).add(sum(carbohydrates));
        if (total.compareTo(MAX_GRAMS) > 0) {
            problems.add(
                    node.origin(),
                    String.join(" + ", ALWAYS) + " + " + String.join(" + ", carbohydrates) + " make " + text(total)
                            + " g in 100 g",
                    "Expected no more than 101 g, which leaves 1 g for rounding.");
        }
    }

    private BigFraction sum(List<String> names) {
        return names.stream()
                .map(name -> values.getOrDefault(name, BigFraction.ZERO))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** Parts that lie beside each other; 1 g is left for rounding, since food tables round each of them. */
    private void checkParts(String whole, String... parts) {
        var more = values.get(whole);
        var less = sum(List.of(parts));
        if (more != null
                && List.of(parts).stream().noneMatch(part -> isAbove(part, more))
                && less.subtract(more).compareTo(BigFraction.ONE) > 0) {
            problems.add(
                    node.origin(),
                    String.join(" + ", parts) + " make " + text(less) + ", above " + whole + " of " + text(more),
                    "Expected parts that add up to " + whole + " or less.");
        }
    }

    private boolean isAbove(String part, BigFraction whole) {
        return values.getOrDefault(part, BigFraction.ZERO).compareTo(whole) > 0;
    }

    private void checkPart(String part, String whole) {
        var less = values.get(part);
        var more = values.get(whole);
        if (less != null && more != null && less.compareTo(more) > 0) {
            node.field(part)
                    .map(Field::value)
                    .ifPresent(place -> problems.add(
                            place.origin(),
                            part + " of " + text(less) + " is above " + whole + " of " + text(more),
                            "Expected " + part + " as a part of " + whole + ", so " + text(more) + " or less."));
        }
    }

    private static String text(BigFraction value) {
        return Decimal.significant(value, DIGITS).toPlainString();
    }
}
