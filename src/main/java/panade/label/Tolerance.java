package panade.label;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.label.nutrition.Format;
import panade.quantity.Decimal;

/**
 * What a laboratory may find of a declared figure.
 *
 * @param low at least; null when nothing is too little
 * @param high at most; null when nothing is too much
 */
record Tolerance(@Nullable BigFraction low, @Nullable BigFraction high, String source) {
    private static final String US = "21 CFR 101.9(g)(4) and (5)";
    private static final String EU = "Commission guidance on tolerances, December 2012, table 1 (from memory)";

    /** The third group of 101.9(g)(5); all else that is declared is of class II, (g)(4)(ii). */
    private static final Set<String> NOT_MORE =
            Set.of("ENERC", "FAT", "FASAT", "FATRN", "CHOLE", "NA", "SUGAR", "SUGAD");

    private static final Set<String> GRAMS = Set.of("CHOAVL", "SUGAR", "PROCNT", "FIBTG");
    private static final Set<String> MINERALS = Set.of("K", "CLD", "CA", "P", "MG", "FE", "ZN", "CU", "MN", "SE", "ID");

    /**
     * A band of the Union's table.
     *
     * @param end where it ends; null for the last
     * @param inclusive whether the end belongs to it
     * @param plus what may be more or less: an amount, or a part of what is declared
     */
    private record Band(@Nullable String end, boolean inclusive, String plus, boolean isPart) {
        boolean holds(BigFraction declared) {
            int side = end == null ? -1 : declared.compareTo(Decimal.of(end));
            return side < 0 || (inclusive && side == 0);
        }
    }

    private static final List<Band> OF_GRAMS = List.of(under("10", "2", false), upTo("40"), rest("8", false));
    private static final List<Band> OF_FAT = List.of(under("10", "1.5", false), upTo("40"), rest("8", false));
    private static final List<Band> OF_SATURATES = List.of(under("4", "0.8", false), rest("0.2", true));
    private static final List<Band> OF_SALT = List.of(under("1.25", "0.375", false), rest("0.2", true));

    private static Band under(String end, String plus, boolean isPart) {
        return new Band(end, false, plus, isPart);
    }

    private static Band upTo(String end) {
        return new Band(end, true, "0.2", true);
    }

    private static Band rest(String plus, boolean isPart) {
        return new Band(null, false, plus, isPart);
    }

    /** The tolerance on a declared figure; empty when the law or the guidance has none. */
    static Optional<Tolerance> on(String id, BigFraction declared, Format format) {
        return format == Format.US ? Optional.of(inTheStates(id, declared)) : inTheUnion(id, declared);
    }

    private static Tolerance inTheStates(String id, BigFraction declared) {
        return NOT_MORE.contains(id)
                ? new Tolerance(null, declared.multiply(Decimal.of("1.2")), US)
                : new Tolerance(declared.multiply(Decimal.of("0.8")), null, US);
    }

    private static Optional<Tolerance> inTheUnion(String id, BigFraction declared) {
        if (id.startsWith("ENERC")) {
            return Optional.empty();
        }
        if (GRAMS.contains(id)) {
            return Optional.of(around(declared, OF_GRAMS));
        }
        return Optional.of(
                switch (id) {
                    case "FAT" -> around(declared, OF_FAT);
                    case "FASAT" -> around(declared, OF_SATURATES);
                    case "NA" -> around(declared, OF_SALT);
                    default -> ofSmallThings(id, declared);
                });
    }

    private static Tolerance ofSmallThings(String id, BigFraction declared) {
        var most = MINERALS.contains(id) ? "1.45" : "1.5";
        return new Tolerance(declared.multiply(Decimal.of("0.65")), declared.multiply(Decimal.of(most)), EU);
    }

    private static Tolerance around(BigFraction declared, List<Band> bands) {
        var band =
                bands.stream().filter(each -> each.holds(declared)).findFirst().orElseThrow();
        var plus = band.isPart() ? declared.multiply(Decimal.of(band.plus())) : Decimal.of(band.plus());
        return new Tolerance(declared.subtract(plus), declared.add(plus), EU);
    }
}
