package panade.label;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import panade.domain.pantry.Ingredient;
import panade.domain.pantry.LabelMarks;
import panade.domain.pantry.LabelMarks.Additive;
import panade.label.nutrition.Format;

/** What a law calls an ingredient in a statement, and how it can be told that the name is not enough for it. */
final class PrintedName {
    /** Words that stand for several spices or herbs. */
    private static final Set<String> COLLECTIVE = Set.of(
            "spice",
            "spices",
            "spice(s)",
            "herb",
            "herbs",
            "herb(s)",
            "mixed herbs",
            "mixed spices",
            "spices and herbs",
            "herbs and spices");

    /** 21 CFR 101.22(a)(2): paprika, turmeric, saffron or other spices which are also colors. */
    private static final String COLOURING_SPICE = "spice and coloring";

    /** Names that are not those of the Union's law, each with what it has (from memory). */
    private static final Map<String, String> NOT_IN_THE_UNION = Map.of(
            "canola", "rapeseed oil",
            "color",
                    "the name of a colouring food, such as beetroot juice concentrate, or \"colour:\" and the additive",
            "monosodium glutamate", "flavour enhancer: monosodium glutamate");

    /** Additives by words in their names, with the number of the Union's list (from memory). */
    private static final Map<String, String> ADDITIVES = Map.ofEntries(
            Map.entry("methylcellulose", "E 461"),
            Map.entry("methyl cellulose", "E 461"),
            Map.entry("hydroxypropyl methylcellulose", "E 464"),
            Map.entry("carboxymethylcellulose", "E 466"),
            Map.entry("cellulose gum", "E 466"),
            Map.entry("carrageenan", "E 407"),
            Map.entry("konjac", "E 425"),
            Map.entry("xanthan", "E 415"),
            Map.entry("guar gum", "E 412"),
            Map.entry("locust bean gum", "E 410"),
            Map.entry("gellan", "E 418"),
            Map.entry("agar", "E 406"),
            Map.entry("alginate", "E 401"),
            Map.entry("pectin", "E 440"),
            Map.entry("lecithin", "E 322"),
            Map.entry("potassium chloride", "E 508"),
            Map.entry("citric acid", "E 330"),
            Map.entry("lactic acid", "E 270"),
            Map.entry("ascorbic acid", "E 300"),
            Map.entry("beetroot red", "E 162"),
            Map.entry("monosodium glutamate", "E 621"));

    /** Words that tell a food of several ingredients (common practice, no source). */
    private static final List<String> COMPOUND = List.of(
            "sauce",
            "paste",
            "miso",
            "stock",
            "broth",
            "bouillon",
            "seasoning",
            "marinade",
            "margarine",
            "mayonnaise",
            "ketchup",
            "bread",
            "breadcrumbs",
            "crumbs",
            "salted",
            "pickled",
            "brined",
            "curry",
            "kimchi",
            "tofu",
            "noodles",
            "dressing",
            "relish",
            "sausage",
            "cheese");

    private static final List<String> SINGLE = List.of("tomato paste", "sesame paste", "garlic paste", "almond paste");

    private PrintedName() {}

    /** Its name by that law: the set's own for it, or its label. */
    static String of(Ingredient ingredient, Format format) {
        var marks = ingredient.labelling().marks();
        var name = marks.names().getOrDefault(format.name().toLowerCase(Locale.ROOT), ingredient.label());
        return format == Format.US && marks.colours() && isCollective(name) ? COLOURING_SPICE : name;
    }

    /** The name of an additive behind the class it works as, in the Union: Annex VII, Part C. */
    static String withClass(String name, Collection<Ingredient> under, Format format) {
        var additive = under.stream()
                .map(ingredient -> ingredient.labelling().marks().additive())
                .filter(Objects::nonNull)
                .findFirst();
        return format == Format.US
                ? name
                : additive.map(Additive::category)
                        .filter(category -> !name.startsWith(category))
                        .map(category -> category + ": " + name)
                        .orElse(name);
    }

    /** Whether one word stands for several spices or herbs. */
    static boolean isCollective(String name) {
        return COLLECTIVE.contains(name.strip().toLowerCase(Locale.ROOT));
    }

    /** What the Union calls it, where the name is not the law's. */
    static Optional<String> inTheUnion(String name) {
        return NOT_IN_THE_UNION.keySet().stream()
                .filter(word -> holds(name, word))
                .findFirst()
                .map(NOT_IN_THE_UNION::get);
    }

    /** The number of the additive that a name tells, where no class is stated for it. */
    static Optional<String> unclassed(Ingredient ingredient) {
        LabelMarks marks = ingredient.labelling().marks();
        return marks.additive() != null
                ? Optional.empty()
                : ADDITIVES.keySet().stream()
                        .filter(word -> holds(ingredient.label(), word))
                        .max(Comparator.comparing(String::length))
                        .map(ADDITIVES::get);
    }

    /** Whether it is likely made of several things and the set does not say of which. */
    static boolean lacksParts(Ingredient ingredient) {
        if (ingredient.labelling().madeOf() != null) {
            return false;
        }
        var text = ingredient.label() + " " + ingredient.name();
        var allergens = ingredient.allergens();
        boolean named = COMPOUND.stream().anyMatch(word -> holds(text, word))
                && SINGLE.stream().noneMatch(word -> holds(text, word));
        return named || (allergens != null && allergens.size() > 1);
    }

    private static boolean holds(String text, String word) {
        return Pattern.compile("(?i)(?<![\\p{L}])" + Pattern.quote(word) + "(?![\\p{L}])")
                .matcher(text)
                .find();
    }
}
