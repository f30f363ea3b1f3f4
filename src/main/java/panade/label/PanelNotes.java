package panade.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.label.nutrition.Amount;
import panade.label.nutrition.Content;
import panade.label.nutrition.Energy;
import panade.label.nutrition.EnergyMethod;
import panade.label.nutrition.FibreNotes;
import panade.label.nutrition.Format;
import panade.label.nutrition.ReferenceAmount;
import panade.label.nutrition.UsRounding;

/** Words how the figures of a panel were worked out. */
final class PanelNotes {
    private PanelNotes() {}

    static List<String> of(Brief brief, Blend blend, PanelRequest request) {
        var notes = new ArrayList<String>();
        notes.add("Amounts are of the mix as weighed in, raw; rounded once, halves up.");
        if (request.format() == Format.US) {
            notes.add(ReferenceAmount.note(
                    request.serving() == null ? brief.practice().serving() : request.serving()));
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
        notes.addAll(FibreNotes.of(brief, blend, request.format()));
        ownEnergy(brief, blend, request).ifPresent(notes::add);
        var silent = minorUnstated(brief, blend, request);
        if (!silent.isEmpty()) {
            notes.add("Counted as none in the energy where an ingredient does not state it: " + silent + ".");
        }
        return notes;
    }

    /** Why the set's own energy, which the blend is told with, is another figure; empty when it is the same. */
    private static Optional<String> ownEnergy(Brief brief, Blend blend, PanelRequest request) {
        var law = request.format() == Format.US ? request.energy().energy() : Energy.EU_KILOCALORIES;
        var printed = Amount.of(law, brief, blend).per100g();
        var own = Amount.of(Content.of("ENERC"), brief, blend).per100g();
        var sum = brief.set().property("ENERC").sum();
        var how = sum.isEmpty()
                ? "as its ingredients state it"
                : "the sum it declares, kcal per gram: "
                        + String.join(
                                ", ",
                                sum.keySet().stream()
                                        .sorted()
                                        .map(part -> part + " "
                                                + UsRounding.figure(sum.getOrDefault(part, BigFraction.ZERO)))
                                        .toList());
        return Optional.ofNullable(own)
                .filter(kcal -> !kcal.equals(printed))
                .map(kcal -> "The ingredient set's own energy (ENERC) is " + UsRounding.figure(kcal)
                        + " kcal per 100 g, " + how + "; the label counts by the law's factors, "
                        + (printed == null
                                ? "which need values that are not known."
                                : UsRounding.figure(printed) + "."));
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
