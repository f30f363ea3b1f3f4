package panade.label.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;

/**
 * What a gram of ideal protein holds of each amino acid.
 *
 * @param name the age it is for
 * @param source where it is published
 * @param needs in the order of the table
 */
public record AminoPattern(String name, String source, List<Need> needs) {
    public AminoPattern {
        needs = List.copyOf(needs);
    }

    /**
     * One amino acid, or two that stand in for each other.
     *
     * @param name in a cook's words
     * @param whole the tagname of their sum; null for a single one
     * @param parts tagnames
     * @param perGram milligrams in a gram of protein
     */
    public record Need(String name, List<String> whole, List<String> parts, BigFraction perGram) {
        public Need {
            whole = List.copyOf(whole);
            parts = List.copyOf(parts);
        }
    }

    private static final List<Map.Entry<String, String>> NAMES = List.of(
            Map.entry("HIS", "histidine"),
            Map.entry("ILE", "isoleucine"),
            Map.entry("LEU", "leucine"),
            Map.entry("LYS", "lysine"),
            Map.entry("AAS=MET+CYS", "methionine and cystine"),
            Map.entry("AAA=PHE+TYR", "phenylalanine and tyrosine"),
            Map.entry("THR", "threonine"),
            Map.entry("TRP", "tryptophan"),
            Map.entry("VAL", "valine"));

    /** The pattern of 21 CFR 101.9(c)(7)(ii). */
    public static final AminoPattern FAO_WHO_1991 = pattern(
            "children of 2 to 5 years",
            "FAO/WHO, Protein Quality Evaluation, FAO Food and Nutrition Paper 51, 1991",
            "19 28 66 58 25 63 34 11 35");

    /** The pattern advised for older children and adults. */
    public static final AminoPattern FAO_2013 = pattern(
            "over 3 years",
            "FAO, Dietary Protein Quality Evaluation, FAO Food and Nutrition Paper 92, 2013, table 5"
                    + " (the last five figures from memory)",
            "16 30 61 48 23 41 25 6.6 40");

    private static AminoPattern pattern(String name, String source, String figures) {
        var numbers = figures.split(" ", -1);
        var needs = new ArrayList<Need>();
        for (int i = 0; i < numbers.length; i++) {
            needs.add(need(NAMES.get(i), Decimal.of(numbers[i])));
        }
        return new AminoPattern(name, source, needs);
    }

    private static Need need(Map.Entry<String, String> name, BigFraction perGram) {
        var sides = name.getKey().split("=", -1);
        return sides.length == 1
                ? new Need(name.getValue(), List.of(), List.of(sides[0]), perGram)
                : new Need(name.getValue(), List.of(sides[0]), List.of(sides[1].split("\\+", -1)), perGram);
    }
}
