package panade.domain.pantry;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Isolated and synthetic fibres, and whether the United States let a label count them as dietary fiber. Fibre that is
 * intrinsic and intact in a plant always counts; of the others those that 21 CFR 101.9(c)(6)(i) lists, and those that
 * FDA intends to add to that list and lets be declared meanwhile.
 *
 * @param name what an ingredient set calls it
 * @param counts whether it counts
 * @param source who says so
 * @param words other names of it
 */
public record IsolatedFibre(String name, boolean counts, String source, List<String> words) {
    /** What an ingredient set says of fibre that is in the plant as it grew, whatever its name sounds like. */
    public static final String INTACT = "intact";

    /** What it says of an isolated fibre that has no name here. */
    public static final String OTHER = "other isolated fibre";

    /** Grams in 100 g from which an ingredient's own name is taken to tell what its fibre is. */
    private static final BigFraction MOSTLY = BigFraction.of(30);

    private static final String RULE = "21 CFR 101.9(c)(6)(i)";
    private static final String GUIDANCE = "FDA guidance of June 2018, pending rulemaking";
    private static final String NOT_LISTED = "not among those of 21 CFR 101.9(c)(6)(i) or of FDA's guidance";

    private static final List<IsolatedFibre> ALL = Stream.of(
                    of(true, RULE, """
                            beta-glucan: beta glucan
                            psyllium husk: psyllium
                            cellulose: microcrystalline cellulose, cellulose powder
                            guar gum: guar
                            pectin
                            locust bean gum: carob bean gum, carob gum
                            hydroxypropyl methylcellulose: hydroxypropylmethylcellulose, hpmc, hypromellose
                            """),
                    of(true, GUIDANCE, """
                            mixed plant cell wall fibre: citrus fibre, pea fibre, pea hull fibre, apple fibre, bamboo fibre, \
                            oat fibre, oat hull fibre, potato fibre, sugar beet fibre, wheat fibre, soy fibre, corn hull fibre, \
                            cocoa fibre, rice bran fibre, barley fibre, cottonseed fibre, sugar cane fibre
                            arabinoxylan
                            alginate: sodium alginate
                            inulin: oligofructose, chicory root fibre, fructooligosaccharide
                            resistant starch 2: high amylose starch
                            galactooligosaccharide
                            polydextrose
                            resistant maltodextrin: resistant dextrin
                            """),
                    of(
                            true,
                            "FDA's answer to a petition, March 2019, pending rulemaking",
                            "cross-linked phosphorylated RS4"),
                    of(true, "FDA's answer to a petition, January 2020, pending rulemaking", """
                            glucomannan: konjac, konjac flour, konjac gum
                            """),
                    of(true, "FDA's answer to a petition, December 2021, pending rulemaking", """
                            acacia: gum arabic, gum acacia, acacia gum
                            """),
                    of(false, NOT_LISTED, """
                            methylcellulose: methyl cellulose
                            carrageenan
                            xanthan gum: xanthan
                            gellan gum: gellan
                            agar: agar-agar
                            carboxymethylcellulose: cellulose gum, carboxymethyl cellulose
                            curdlan
                            tara gum
                            karaya gum
                            tragacanth
                            other isolated fibre
                            """))
            .flatMap(List::stream)
            .toList();

    public IsolatedFibre {
        words = List.copyOf(words);
    }

    private static List<IsolatedFibre> of(boolean counts, String source, String table) {
        return table.lines()
                .map(line -> line.split(":", -1))
                .map(sides -> new IsolatedFibre(
                        sides[0].strip(), counts, source, sides.length == 1 ? List.of() : words(sides[1])))
                .toList();
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split(",", -1)).map(String::strip).toList();
    }

    /** Names that an ingredient set may give. */
    public static List<String> names() {
        return Stream.concat(Stream.of(INTACT), ALL.stream().map(IsolatedFibre::name))
                .toList();
    }

    /** The one that has that name or word; empty for fibre that is intact. */
    public static Optional<IsolatedFibre> named(String name) {
        var plain = plain(name);
        return ALL.stream()
                .filter(fibre -> fibre.allWords().anyMatch(plain::equals))
                .findFirst();
    }

    private Stream<String> allWords() {
        return Stream.concat(Stream.of(name), words.stream()).map(IsolatedFibre::plain);
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace("fiber", "fibre");
    }

    /**
     * What the fibre of an ingredient is: as its {@code fibre} says or, without that, as its name does where it is
     * mostly fibre; empty for fibre that is intact in its plant.
     */
    public static Optional<IsolatedFibre> of(Ingredient ingredient) {
        var marked = ingredient.labelling().marks().fibre();
        return marked == null ? byName(ingredient) : named(marked);
    }

    /** Whether that is said by the ingredient's name alone. */
    public static boolean isGuessed(Ingredient ingredient) {
        return ingredient.labelling().marks().fibre() == null;
    }

    private static Optional<IsolatedFibre> byName(Ingredient ingredient) {
        var fibre = ingredient.values().get("FIBTG");
        if (fibre == null || fibre.compareTo(MOSTLY) < 0) {
            return Optional.empty();
        }
        var text = " " + plain(ingredient.label() + " " + ingredient.name()).replaceAll("[^\\p{L}\\p{N}-]+", " ") + " ";
        return ALL.stream()
                .flatMap(each -> each.allWords().map(word -> Map.entry(word, each)))
                .filter(each -> text.contains(" " + each.getKey() + " "))
                .max(Comparator.comparing(each -> each.getKey().length()))
                .map(Map.Entry::getValue);
    }
}
