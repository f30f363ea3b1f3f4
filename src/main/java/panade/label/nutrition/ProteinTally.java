package panade.label.nutrition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;
import panade.label.nutrition.AminoPattern.Need;
import panade.label.nutrition.ProteinQuality.Missing;
import panade.label.nutrition.ProteinQuality.Score;

/**
 * Adds up protein, amino acids and what of them is digested, over the ingredients that bring protein; what has no
 * protein has no amino acids. What is not known counts as none and is noted.
 */
final class ProteinTally {
    private static final String PROTEIN = "PROCNT";

    private final Brief brief;
    private final Map<Ingredient, BigFraction> protein = new LinkedHashMap<>();
    private final Map<Ingredient, BigFraction> shares;
    private final Set<Ingredient> unweighed = new LinkedHashSet<>();

    ProteinTally(Brief brief, Blend blend) {
        this.brief = brief;
        this.shares = Amount.shares(brief, blend);
        shares.forEach((ingredient, share) -> stated(ingredient, PROTEIN)
                .ifPresentOrElse(
                        value -> protein.put(ingredient, value.multiply(share)), () -> unweighed.add(ingredient)));
        protein.values().removeIf(brought -> brought.signum() == 0);
    }

    private Optional<BigFraction> stated(Ingredient ingredient, String tagname) {
        return brief.composition().stated(ingredient.id(), tagname);
    }

    private String title(String tagname) {
        return brief.set().property(tagname).title();
    }

    private BigFraction total() {
        return protein.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** The lowest ratio to the pattern, times the digestibility of the protein as a whole. */
    Score pdcaas(AminoPattern pattern) {
        var missing = new LinkedHashMap<Ingredient, Set<String>>();
        var digested = BigFraction.ZERO;
        for (var each : protein.entrySet()) {
            var part = each.getKey().labelling().digestibility().get(PROTEIN);
            note(missing, each.getKey(), part, "digestibility of its protein");
            digested = digested.add(each.getValue().multiply(part == null ? BigFraction.ZERO : part));
        }
        var whole = total();
        var factor = whole.signum() == 0 ? BigFraction.ZERO : digested.divide(whole);
        return score("PDCAAS", pattern, missing, (ingredient, tagname) -> BigFraction.ONE, factor);
    }

    /** The lowest ratio to the pattern of what is digested of each amino acid. */
    Score diaas(AminoPattern pattern) {
        var missing = new LinkedHashMap<Ingredient, Set<String>>();
        return score(
                "DIAAS",
                pattern,
                missing,
                (ingredient, tagname) -> {
                    var known = ingredient.labelling().digestibility();
                    var part = known.getOrDefault(tagname, known.get(PROTEIN));
                    note(missing, ingredient, part, "digestibility of its " + title(tagname));
                    return part == null ? BigFraction.ZERO : part;
                },
                BigFraction.ONE);
    }

    /** What of an amino acid counts. */
    private interface Part {
        BigFraction of(Ingredient ingredient, String tagname);
    }

    private Score score(
            String name, AminoPattern pattern, Map<Ingredient, Set<String>> missing, Part part, BigFraction factor) {
        Need limiting = pattern.needs().get(0);
        BigFraction least = null;
        for (var need : pattern.needs()) {
            var ratio = ratio(need, missing, part);
            if (least == null || ratio.compareTo(least) < 0) {
                least = ratio;
                limiting = need;
            }
        }
        unweighed.forEach(ingredient -> note(missing, ingredient, null, "protein"));
        var value = least == null ? BigFraction.ZERO : least.multiply(factor);
        boolean known = missing.isEmpty() && total().signum() > 0;
        return new Score(
                name,
                pattern,
                known ? value : null,
                known ? limiting.name() : "",
                told(missing),
                unweighed.isEmpty() && total().signum() > 0 ? value : null);
    }

    private BigFraction ratio(Need need, Map<Ingredient, Set<String>> missing, Part part) {
        var held = BigFraction.ZERO;
        for (var ingredient : protein.keySet()) {
            var share = shares.getOrDefault(ingredient, BigFraction.ZERO);
            for (var tagname : tagnames(need, ingredient)) {
                var value = stated(ingredient, tagname).orElse(null);
                note(missing, ingredient, value, title(tagname));
                if (value != null) {
                    held = held.add(share.multiply(value).multiply(part.of(ingredient, tagname)));
                }
            }
        }
        var whole = total();
        return whole.signum() == 0 ? BigFraction.ZERO : held.divide(whole).divide(need.perGram());
    }

    /** The two apart where both are stated, else their sum where that is. */
    private List<String> tagnames(Need need, Ingredient ingredient) {
        boolean apart = need.parts().stream()
                .allMatch(tagname -> stated(ingredient, tagname).isPresent());
        boolean together = !need.whole().isEmpty()
                && stated(ingredient, need.whole().get(0)).isPresent();
        return !apart && together ? need.whole() : need.parts();
    }

    private static void note(
            Map<Ingredient, Set<String>> missing, Ingredient ingredient, @Nullable BigFraction value, String what) {
        if (value == null) {
            missing.computeIfAbsent(ingredient, each -> new LinkedHashSet<>()).add(what);
        }
    }

    private static List<Missing> told(Map<Ingredient, Set<String>> missing) {
        var told = new ArrayList<Missing>();
        missing.forEach((ingredient, values) -> told.add(new Missing(ingredient.name(), List.copyOf(values))));
        return told;
    }
}
