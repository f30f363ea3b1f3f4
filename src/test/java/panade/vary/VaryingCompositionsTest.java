package panade.vary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.testing.Planners;
import panade.vary.CompositionStudy.Broken;

/**
 * Small kitchens, invented, whose answers follow from the table of the standard normal distribution in the
 * NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: between nothing and 0.50, 1.00 and 1.96 standard
 * deviations lie .19146, .34134 and .47500 of it (digits from memory).
 */
class VaryingCompositionsTest {
    private static final int DRAWS = 6_000;

    /** Four standard deviations of half of so many draws. */
    private static final double SAMPLING = 4 * 0.5 / Math.sqrt(DRAWS);

    private static final String PEA =
            "{\"id\": \"pea\", \"values\": {\"PROCNT\": 22}, \"others\": 0, \"spread\": {\"PROCNT\": 2}}";

    @TempDir
    Path folder;

    private final Planner planner = Planners.LINEAR;

    @Test
    void a_kept_blend_breaks_its_floor_as_often_as_the_normal_tail_says() throws IOException {
        assertThat(part(kept(PEA, "pea,a,5,kg", floor("20 %")))).isCloseTo(.5 - .34134, within(SAMPLING));
        assertThat(part(kept(PEA, "pea,a,5,kg", floor("21 %")))).isCloseTo(.5 - .19146, within(SAMPLING));
        assertThat(part(kept(PEA, "pea,a,5,kg", floor("18.08 %")))).isCloseTo(.5 - .475, within(SAMPLING));
    }

    @Test
    void a_kept_blend_breaks_its_ceiling_as_often_as_the_normal_tail_says() throws IOException {
        var most = "{\"name\": \"most\", \"property\": \"PROCNT\", \"max\": \"24 %\"}";
        assertThat(part(kept(PEA, "pea,a,5,kg", most))).isCloseTo(.5 - .34134, within(SAMPLING));
    }

    /** Half of each, 20 and 30 with spreads of 3 and 4: 25 with a spread of half of 5, a 3-4-5 triangle. */
    @Test
    void spreads_of_two_ingredients_add_as_squares() throws IOException {
        var both = """
                {"id": "pea", "values": {"PROCNT": 20}, "others": 0, "spread": {"PROCNT": 3}},
                {"id": "soy", "values": {"PROCNT": 30}, "others": 0, "spread": {"PROCNT": 4}}
                """;
        var half = "{\"ingredient\": \"pea\", \"min\": \"50 %\", \"max\": \"50 %\"}, ";
        var found = study(both, "pea,a,5,kg\nsoy,a,6,kg", half + floor("23.75 %"), 1);
        assertThat(found.values()).isEqualTo(2);
        assertThat(part(only(found))).isCloseTo(.5 - .19146, within(SAMPLING));
    }

    @Test
    void where_nothing_else_can_be_bought_a_broken_floor_leaves_no_blend_and_is_counted() throws IOException {
        var found = study(PEA, "pea,a,5,kg", floor("20 %"), 2);
        assertThat(found.noBlend()).isEqualTo(only(found).draws()).isPositive();
        assertThat(found.keptMeets()).isEqualTo(DRAWS - found.noBlend());
        assertThat(found.draws()).isEqualTo(DRAWS);
    }

    /**
     * One in twenty lies 1.645 standard deviations below: 22 - 3.29. The cost of what floats in free water: 5 x 10 / p.
     */
    @Test
    void with_water_to_thin_it_the_cost_follows_what_the_pea_holds() throws IOException {
        var thinned = PEA + ", {\"id\": \"water\", \"values\": {}, \"others\": 0}";
        var found = study(thinned, "pea,a,5,kg\nwater,tap,0,kg", floor("10 %"), 2);
        var costs = Objects.requireNonNull(found.costs());
        assertThat(found.noBlend()).isZero();
        assertThat(part(only(found))).isCloseTo(.5, within(SAMPLING));
        assertThat(Objects.requireNonNull(only(found).oneInTwenty()).doubleValue())
                .isCloseTo(10 * (22 - 3.29) / 22, within(.06));
        assertThat(costs.levels().get(0).perKg().doubleValue()).isCloseTo(50 / (22 + 3.29), within(.02));
        assertThat(costs.levels().get(2).perKg().doubleValue()).isCloseTo(50 / 22.0, within(.02));
        assertThat(costs.levels().get(4).perKg().doubleValue()).isCloseTo(50 / (22 - 3.29), within(.02));
    }

    @Test
    void nothing_holds_less_than_nothing_or_more_than_itself() throws IOException {
        var extreme = """
                {"id": "oil", "values": {"FAT": 99, "PROCNT": 0.1}, "others": 0, "spread": {"FAT": 5, "PROCNT": 5}}
                """;
        var found = study(extreme, "oil,a,5,kg", floor("0 %") + ", {\"property\": \"FAT\", \"max\": \"100 %\"}", 2);
        assertThat(found.values()).isEqualTo(2);
        assertThat(found.broken()).isEmpty();
        assertThat(found.keptMeets()).isEqualTo(DRAWS);
    }

    @Test
    void threads_change_nothing_and_another_seed_does() throws IOException {
        var today = today(PEA, "pea,a,5,kg", floor("20 %"));
        var one = VaryingCompositions.of(planner, today, Map.of(), 500, 1, 1);
        assertThat(VaryingCompositions.of(planner, today, Map.of(), 500, 1, 3)).isEqualTo(one);
        assertThat(VaryingCompositions.of(planner, today, Map.of(), 500, 2, 3)).isNotEqualTo(one);
    }

    @Test
    void without_a_stated_spread_nothing_is_drawn() throws IOException {
        var still = "{\"id\": \"pea\", \"values\": {\"PROCNT\": 22}, \"others\": 0, \"spread\": {\"PROCNT\": 0}}";
        assertThat(VaryingCompositions.of(planner, today(still, "pea,a,5,kg", floor("20 %")), Map.of(), 5, 1, 1))
                .isEqualTo(Optional.empty());
    }

    private static String floor(String number) {
        return "{\"name\": \"floor\", \"property\": \"PROCNT\", \"min\": \"" + number + "\"}";
    }

    private static double part(Broken broken) {
        return broken.draws() / (double) DRAWS;
    }

    private Broken kept(String ingredients, String prices, String bounds) throws IOException {
        return only(study(ingredients, prices, bounds, 2));
    }

    private static Broken only(CompositionStudy study) {
        assertThat(study.broken()).hasSize(1);
        return study.broken().get(0);
    }

    private CompositionStudy study(String ingredients, String prices, String bounds, int threads) throws IOException {
        return VaryingCompositions.of(planner, today(ingredients, prices, bounds), Map.of(), DRAWS, 1, threads)
                .orElseThrow();
    }

    private Blended today(String ingredients, String prices, String bounds) throws IOException {
        Files.writeString(
                folder.resolve("set.json"),
                "{\"title\": \"k\", \"source\": \"invented\", \"ingredients\": [" + ingredients + "]}");
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\n" + prices + "\n");
        var brief = Files.writeString(folder.resolve("brief.json"), """
                {"title": "k", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", "bounds": [%s]}
                """.formatted(bounds));
        var reading = Documents.readBrief(brief, Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return (Blended) planner.answer(((Reading.Accepted<Brief>) reading).value());
    }
}
