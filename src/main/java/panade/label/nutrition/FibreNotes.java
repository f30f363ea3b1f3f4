package panade.label.nutrition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.IsolatedFibre;

/** Words which isolated fibre is counted as fibre and which is not, and who says so. */
public final class FibreNotes {
    private final Brief brief;
    private final Map<Ingredient, BigFraction> shares;

    private FibreNotes(Brief brief, Blend blend) {
        this.brief = brief;
        this.shares = Amount.shares(brief, blend);
    }

    public static List<String> of(Brief brief, Blend blend, Format format) {
        var notes = new FibreNotes(brief, blend);
        return format == Format.US ? notes.inTheStates() : notes.inTheUnion();
    }

    private List<String> inTheStates() {
        var notes = new ArrayList<String>();
        var out = grams(fibre -> !fibre.counts());
        if (!out.isEmpty()) {
            notes.add("Dietary Fiber leaves out " + words(out)
                    + ": isolated fibre that neither 21 CFR 101.9(c)(6)(i) nor FDA's"
                    + " guidance lists. It stays in Total Carbohydrate, and so in the calories.");
        }
        var pending = grams(fibre -> fibre.counts() && fibre.source().contains("pending"));
        if (!pending.isEmpty()) {
            notes.add("Dietary Fiber counts " + words(pending) + " though the rule does not list it yet: "
                    + String.join("; ", sources(pending.keySet())) + ".");
        }
        var guessed = new LinkedHashMap<>(out);
        guessed.putAll(pending);
        guessed.keySet().removeIf(ingredient -> !IsolatedFibre.isGuessed(ingredient));
        if (!guessed.isEmpty()) {
            notes.add("What fibre that is was read from the names of " + names(guessed.keySet())
                    + "; the field \"fibre\" in the ingredient set says it for sure.");
        }
        return notes;
    }

    /** Annex I, point 12: no list says which of them have shown their effect. */
    private List<String> inTheUnion() {
        var isolated = grams(fibre -> true);
        return isolated.isEmpty()
                ? List.of()
                : List.of("Fibre counts " + words(isolated)
                        + ": isolated or synthetic fibre is fibre where generally accepted evidence shows that it does good,"
                        + " Annex I, point 12; there is no list.");
    }

    /** Grams in 100 g of blend by ingredient; what states no fibre is left out. */
    private Map<Ingredient, BigFraction> grams(Predicate<IsolatedFibre> sort) {
        var grams = new LinkedHashMap<Ingredient, BigFraction>();
        shares.forEach((ingredient, share) -> IsolatedFibre.of(ingredient)
                .filter(sort)
                .flatMap(fibre -> brief.composition().stated(ingredient.id(), "FIBTG"))
                .filter(fibre -> fibre.signum() > 0)
                .ifPresent(fibre -> grams.put(ingredient, fibre.multiply(share))));
        return grams;
    }

    private static String words(Map<Ingredient, BigFraction> grams) {
        var total = grams.values().stream().reduce(BigFraction.ZERO, BigFraction::add);
        return UsRounding.figure(total) + " g per 100 g from " + names(grams.keySet());
    }

    private static String names(Set<Ingredient> ingredients) {
        var names = new LinkedHashSet<String>();
        ingredients.forEach(ingredient -> names.add(ingredient.label()));
        return String.join(", ", names);
    }

    private static Set<String> sources(Set<Ingredient> ingredients) {
        var sources = new LinkedHashSet<String>();
        ingredients.forEach(ingredient -> IsolatedFibre.of(ingredient).ifPresent(fibre -> sources.add(fibre.source())));
        return sources;
    }
}
