package panade.label;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.StrangeAllergen;
import panade.label.nutrition.Amount;
import panade.label.nutrition.Format;

/**
 * Allergens in a blend, each with where it comes from.
 *
 * @param format whose law it is
 * @param named those that the law asks to be named, by the law's name
 * @param others those that the ingredient set states and this law does not list
 * @param unknownFor ingredients of which nothing is stated
 * @param strange words that no law's list knows, or that leave open what the law asks for; they stop a label
 */
public record Allergens(
        Format format, List<Carried> named, List<Carried> others, List<String> unknownFor, List<Strange> strange) {
    private static final String GLUTEN = "gluten";

    /** As many names as are told one by one; of more, how many there are. */
    private static final int FEW = 6;

    private static final String NOT_FREE =
            " That is not the same as free of them: nobody has counted what other food leaves"
                    + " on hands and tools, and wheat-free is not gluten-free (rye and barley have it too: 21 CFR 101.91(a)).";

    public Allergens {
        strange = List.copyOf(strange);
        named = List.copyOf(named);
        others = List.copyOf(others);
        unknownFor = List.copyOf(unknownFor);
    }

    /**
     * An allergen and its origin.
     *
     * @param name as the law calls it, with its kind where the law wants that
     * @param carriers names of the ingredients that carry it
     */
    public record Carried(String name, List<String> carriers) {
        public Carried {
            carriers = List.copyOf(carriers);
        }
    }

    /**
     * A word that a label cannot be made of.
     *
     * @param place where its ingredient stands
     * @param ingredient the ingredient's id
     * @param what what is wrong, without a full stop
     * @param advice what to write instead
     */
    public record Strange(String place, String ingredient, String word, String what, String advice) {
        /** Place, fault and advice. */
        public String text() {
            return place + ": " + what + ".\n    " + advice;
        }
    }

    /** The allergens of a blend. */
    static Allergens of(Brief brief, Blend blend, Format format) {
        Map<String, Set<String>> named = new LinkedHashMap<>();
        Map<String, Set<String>> others = new LinkedHashMap<>();
        var unknown = new LinkedHashSet<String>();
        var strange = new ArrayList<Strange>();
        for (var ingredient : Amount.shares(brief, blend).keySet()) {
            var stated = ingredient.allergens();
            if (stated == null) {
                unknown.add(ingredient.name());
                continue;
            }
            strange.addAll(strange(ingredient, format));
            for (var word : new TreeSet<>(stated)) {
                var name = AllergenNames.name(word, format);
                var list = name.isEmpty() ? others : named;
                list.computeIfAbsent(name.orElse(word), each -> new LinkedHashSet<>())
                        .add(ingredient.name());
            }
        }
        return new Allergens(format, carried(named), carried(others), List.copyOf(unknown), strange);
    }

    private static List<Strange> strange(Ingredient ingredient, Format format) {
        var all = new ArrayList<Strange>();
        StrangeAllergen.of(ingredient)
                .forEach(each -> all.add(
                        new Strange(each.origin().place(), ingredient.id(), each.word(), each.what(), each.advice())));
        var stated = ingredient.allergens();
        if (format == Format.US && stated != null && stated.contains(GLUTEN)) {
            all.add(new Strange(
                    ingredient.origin().place(),
                    ingredient.id(),
                    GLUTEN,
                    "The allergen \"gluten\" of \"" + ingredient.id() + "\" leaves open whether it is wheat",
                    "Expected the cereal: \"wheat\", \"rye\", \"barley\" or \"oats\"; wheat has to be named, 21 USC"
                            + " 343(w)."));
        }
        return all;
    }

    /** Names of a blend's ingredients whose allergens are not stated, or in a word that no law's list knows. */
    public static Set<String> notKnown(Brief brief, Blend blend) {
        var names = new TreeSet<String>();
        Amount.shares(brief, blend).keySet().stream()
                .filter(each ->
                        each.allergens() == null || !StrangeAllergen.of(each).isEmpty())
                .forEach(each -> names.add(each.name()));
        return names;
    }

    /** Allergens that a blend's ingredients are said to carry, in the ingredient set's own words. */
    public static Set<String> stated(Brief brief, Blend blend) {
        var all = new TreeSet<String>();
        Amount.shares(brief, blend).keySet().forEach(ingredient -> {
            var stated = ingredient.allergens();
            if (stated != null) {
                all.addAll(stated);
            }
        });
        return all;
    }

    private static List<Carried> carried(Map<String, Set<String>> carriers) {
        var list = new ArrayList<Carried>();
        new TreeSet<>(carriers.keySet())
                .forEach(name -> list.add(new Carried(name, List.copyOf(carriers.getOrDefault(name, Set.of())))));
        return list;
    }

    /**
     * The line that tells them beside the ingredient statement; empty when there is nothing to name, and in the Union,
     * where "contains" stands only on what has no list of ingredients: otherwise the list itself makes them stand out
     * (Regulation (EU) 1169/2011, Article 21(1)).
     */
    public String contains() {
        return named.isEmpty() || format == Format.EU ? "" : "Contains: " + names() + ".";
    }

    private String names() {
        return String.join(", ", named.stream().map(Carried::name).toList());
    }

    /** What is known of them, for whoever drafts the label. */
    public String sentence() {
        if (!named.isEmpty()) {
            var told = format == Format.EU
                    ? "In capitals in the list, with no line beside it that repeats them (Article 21(1)): " + names()
                            + "."
                    : contains();
            return unknownFor.isEmpty() && strange.isEmpty() ? told : told + " " + open();
        }
        return unknownFor.isEmpty() && strange.isEmpty()
                ? "No allergen that the law names is stated." + NOT_FREE
                : open();
    }

    /** Ingredients of which nobody can tell what they carry. */
    List<String> notKnown() {
        var open = new LinkedHashSet<>(unknownFor);
        strange.forEach(each -> open.add(each.ingredient()));
        return List.copyOf(open);
    }

    /** What is not known. */
    private String open() {
        var open = notKnown();
        var few = open.stream().limit(FEW).toList();
        var rest = open.size() > FEW ? " and " + (open.size() - FEW) + " more" : "";
        return "Which allergens there are is not known: nobody says it of " + String.join("; ", few) + rest + ".";
    }
}
