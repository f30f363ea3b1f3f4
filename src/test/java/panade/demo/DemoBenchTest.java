package panade.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;
import panade.plan.Outcome;
import panade.testing.Planners;

/** What a bench must be able to do with the demo's blends, and what its pantry must hold to be believed. */
class DemoBenchTest {
    private static final List<String> PROXIMATES = List.of("WATER", "PROCNT", "FAT", "CHOAVL", "FIBTG", "ASH");

    /** The viscosity grade, mPa.s at 2 %; that of hydroxypropyl methylcellulose is invented. */
    private static final Map<String, Double> GRADES =
            Map.of("methylcellulose", 4000.0, "methylcellulose-1500", 1500.0, "hpmc", 4000.0);

    /**
     * The eighth root of the viscosity is 1 + alpha C, alpha from the grade (a maker's rule, from memory); a stick
     * blender stirs 50,000 mPa.s (common practice, no source).
     */
    @ParameterizedTest
    @CsvSource({
        "dumpling-filling, september", "dumpling-filling, december", "skewer-mince, september",
        "skewer-mince, december", "taco-crumble, september", "taco-crumble, december"
    })
    void aStickBlenderStirsTheEtherOfTheEmulsion(String name, String month) {
        var blend = blend(name, month);
        double ether = GRADES.keySet().stream()
                .mapToDouble(id -> share(blend, id, "emulsion"))
                .sum();
        double solution = ether + share(blend, "water", "emulsion");
        double root = 1;
        for (var grade : GRADES.entrySet()) {
            double alpha = (Math.pow(grade.getValue(), 0.125) - 1) / 2;
            root += alpha * 100 * share(blend, grade.getKey(), "emulsion") / solution;
        }
        assertThat(ether).isPositive();
        assertThat(Math.pow(root, 8)).isLessThan(50_000);
    }

    /** Some ether glues the mince itself: what is frozen into the fat crumb does not. */
    @ParameterizedTest
    @ValueSource(strings = {"dumpling-filling", "skewer-mince", "taco-crumble"})
    void partOfTheEtherGluesTheMinceAndHasWaterToSwell(String name) {
        var blend = blend(name, "september");
        double ether = GRADES.keySet().stream()
                .mapToDouble(id -> share(blend, id, "mix"))
                .sum();
        assertThat(ether).isGreaterThan(0.004);
        assertThat(share(blend, "water", "mix") / ether).isBetween(7.19, 12.01);
    }

    @ParameterizedTest
    @ValueSource(strings = {"dumpling-filling", "skewer-mince", "taco-crumble"})
    void starchStaysAtThreePerCent(String name) {
        var blend = blend(name, "september");
        assertThat(share(blend, "potato-starch", "mix") + share(blend, "potato-starch-pregel", "mix"))
                .isLessThanOrEqualTo(0.03 + 1e-12);
    }

    @Test
    void everyIngredientIsAccountedForToAGramInAHundred() {
        for (var ingredient : pantry()) {
            double sum = PROXIMATES.stream()
                    .mapToDouble(tag -> value(ingredient, tag))
                    .sum();
            assertThat(sum).as(ingredient.id()).isCloseTo(100, within(0.3));
        }
    }

    /** 22.99 g of 58.44 g sodium chloride are sodium, so no ash can hold more (IUPAC molar masses). */
    @Test
    void noIngredientHoldsMoreSodiumThanItsAshCould() {
        for (var ingredient : pantry()) {
            if (!ingredient.id().equals("water")) {
                assertThat(value(ingredient, "NA") / 1000 * 58.44277 / 22.98977)
                        .as(ingredient.id())
                        .isLessThanOrEqualTo(value(ingredient, "ASH") + 1e-9);
            }
        }
    }

    /** USDA National Nutrient Database for Standard Reference 26, by item number. */
    @ParameterizedTest(name = "{0}: {1} {2}, SR26 {3}")
    @CsvSource({
        "shiitake-dried, PROCNT, 9.58, 11268", "shiitake-dried, LYS, 343, 11268", "shiitake-dried, FIBTG, 11.5, 11268",
        "shiitake-fresh, PROCNT, 2.24, 11238", "coconut-fat, FASAT, 86.5, 04047", "cocoa-butter, FASAT, 59.7, 04501",
        "wheat-gluten, FAT, 1.85, 48052", "wheat-gluten, PROCNT, 75.16, 48052", "garlic, LYS, 273, 11215",
        "soy-sauce, NA, 5493, 16123", "tomato-paste, SUGAR, 12.18, 11546"
    })
    void whatIsTakenFromATableIsWhatStandsThere(String id, String tagname, double value, String item)
            throws IOException {
        var ingredient = pantry().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        assertThat(value(ingredient, tagname)).isCloseTo(value, within(1e-9));
        assertThat(written(id)).contains("SR26 " + item);
    }

    @Test
    void everyIngredientSaysHowFarItsLotsSpread() {
        assertThat(pantry())
                .allSatisfy(ingredient ->
                        assertThat(ingredient.spread()).as(ingredient.id()).isNotEmpty());
    }

    /** The ingredient as its document has it, up to the next one. */
    private static String written(String id) throws IOException {
        var set = Files.readString(Path.of("ingredient-sets", "netherpleat", "ingredients.json"));
        int from = set.indexOf("{\"id\": \"" + id + "\"");
        int to = set.indexOf("{\"id\"", from + 1);
        return set.substring(from, to < 0 ? set.length() : to);
    }

    private static double value(Ingredient ingredient, String tagname) {
        return Objects.requireNonNull(ingredient.values().get(tagname)).doubleValue();
    }

    private static double share(Blend blend, String id, String stage) {
        return blend.lines().stream()
                .filter(line ->
                        line.use().ingredient().equals(id) && line.use().stage().equals(stage))
                .mapToDouble(line -> line.share().doubleValue())
                .sum();
    }

    private static List<Ingredient> pantry() {
        return List.copyOf(
                brief("dumpling-filling", "september").set().ingredients().values());
    }

    private static Blend blend(String name, String month) {
        return ((Outcome.Blended) Planners.LINEAR.answer(brief(name, month))).blend();
    }

    private static Brief brief(String name, String month) {
        var prices = Path.of("ingredient-sets", "netherpleat", "prices-" + month + ".csv");
        var reading = Documents.readBrief(
                Path.of("constraints", name + ".json"), new Overrides(List.of(prices), null, List.of(), null));
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
