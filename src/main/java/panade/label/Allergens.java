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

/**
 * Allergens in a blend, each with where it comes from.
 *
 * @param format whose law it is
 * @param named those that the law asks to be named, by the law's name
 * @param others those that the ingredient set states and this law does not list
 * @param unknownFor ingredients of which nothing is stated
 */
public record Allergens(Format format, List<Carried> named, List<Carried> others, List<String> unknownFor) {
    public Allergens {
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

    /** The allergens of a blend. */
    static Allergens of(Brief brief, Blend blend, Format format) {
        Map<String, Set<String>> named = new LinkedHashMap<>();
        Map<String, Set<String>> others = new LinkedHashMap<>();
        var unknown = new LinkedHashSet<String>();
        for (var ingredient : Amount.shares(brief, blend).keySet()) {
            var stated = ingredient.allergens();
            if (stated == null) {
                unknown.add(ingredient.name());
                continue;
            }
            for (var word : new TreeSet<>(stated)) {
                var name = name(word, format);
                var list = name.isEmpty() ? others : named;
                list.computeIfAbsent(name.isEmpty() ? word : name, each -> new LinkedHashSet<>())
                        .add(ingredient.name());
            }
        }
        return new Allergens(format, carried(named), carried(others), List.copyOf(unknown));
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

    /** The law's name for a word of the ingredient set; empty when the law does not list it. */
    private static String name(String word, Format format) {
        var group = AllergenGroup.of(word);
        var name = group.flatMap(found -> found.name(format));
        boolean plain = name.isEmpty()
                || name.get().equals(word)
                || !group.orElseThrow().wantsItsKind(format);
        return plain ? name.orElse("") : name.get() + " (" + word + ")";
    }

    private static List<Carried> carried(Map<String, Set<String>> carriers) {
        var list = new ArrayList<Carried>();
        new TreeSet<>(carriers.keySet())
                .forEach(name -> list.add(new Carried(name, List.copyOf(carriers.getOrDefault(name, Set.of())))));
        return list;
    }

    /**
     * The line that tells them beside the ingredient statement; empty when there is nothing to name. In the Union
     * "contains" stands only where there is no list of ingredients: otherwise the list itself makes them stand out
     * (Regulation 1169/2011, Article 21(1)).
     */
    public String contains() {
        return named.isEmpty()
                ? ""
                : (format == Format.EU ? "Allergens, in capitals in the list: " : "Contains: ")
                        + String.join(", ", named.stream().map(Carried::name).toList()) + ".";
    }
}
