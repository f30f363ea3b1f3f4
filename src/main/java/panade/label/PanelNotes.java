package panade.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import panade.domain.Blend;
import panade.domain.Brief;

/** Words how the figures of a panel were worked out. */
final class PanelNotes {
    private static final String SERVING =
            "A serving goes by the reference amount: for meat substitutes without sauce 85 g cooked, 110 g uncooked, 55 g as"
                    + " sausage, 21 CFR 101.12(b) (from memory); one piece of 67 % to under 200 % of it is one serving,"
                    + " 101.9(b)(2)(i).";

    private PanelNotes() {}

    static List<String> of(Brief brief, Blend blend, PanelRequest request) {
        var notes = new ArrayList<String>();
        notes.add("Amounts are of the mix as weighed in, raw; rounded once, halves up.");
        if (request.format() == Format.US) {
            notes.add(SERVING);
            notes.add("Calories: " + request.energy().words() + ".");
            notes.addAll(others(brief, blend, request.energy()));
            notes.add("% Daily Value from the amounts before rounding, 21 CFR 101.9(c)(8) and (9).");
        } else {
            notes.add(
                    "Energy: kJ and kcal each summed with the factors of Annex XIV: carbohydrate 17/4, polyols 10/2.4,"
                            + " protein 17/4, fat 37/9, alcohol 29/7, organic acids 13/3, fibre 8/2.");
            notes.add("Salt is sodium times 2.5. Rounding by the Commission's guidance of December 2012.");
            notes.add("% is of the reference intake of an average adult (8400 kJ/2000 kcal), Annex XIII.");
        }
        var silent = minorUnstated(brief, blend, request);
        if (!silent.isEmpty()) {
            notes.add("Counted as none in the energy where an ingredient does not state it: " + silent + ".");
        }
        return notes;
    }

    /** What the other ways of counting come to, where the set says enough for them. */
    private static List<String> others(Brief brief, Blend blend, EnergyMethod chosen) {
        var words = new ArrayList<String>();
        for (var method : EnergyMethod.values()) {
            var kcal = Amount.of(method.energy(), brief, blend).per100g();
            if (method != chosen && kcal != null && saysMore(method, brief, blend)) {
                words.add(method.name().toLowerCase(Locale.ROOT) + " " + UsRounding.figure(kcal));
            }
        }
        return words.isEmpty()
                ? List.of()
                : List.of("Counted in other ways, kcal per 100 g: " + String.join(", ", words) + ".");
    }

    private static boolean saysMore(EnergyMethod method, Brief brief, Blend blend) {
        return method != EnergyMethod.SPECIFIC
                || Amount.shares(brief, blend).keySet().stream()
                        .anyMatch(ingredient ->
                                !ingredient.labelling().energyFactors().isEmpty());
    }

    private static String minorUnstated(Brief brief, Blend blend, PanelRequest request) {
        var minor = request.format() == Format.US ? Energy.US_GENERAL.minor() : Energy.EU_KILOJOULES.minor();
        return String.join(
                ", ",
                minor.keySet().stream()
                        .sorted()
                        .filter(tagname -> !Amount.of(Content.of(tagname), brief, blend)
                                .unknownFor()
                                .isEmpty())
                        .map(tagname -> brief.set().property(tagname).title())
                        .toList());
    }
}
