package panade.nudge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.certify.Decision.Impossible;
import panade.domain.Use;
import panade.nudge.FewChanges.Best;
import panade.testing.Planners;
import panade.testing.SmallKitchen;

/**
 * Changes of a formula of three ingredients, worked by hand (invented): rice, peas and lentils at 1, 5 and 3 a kilogram
 * with nothing, 40 % and 30 % of protein, of which the batch needs 20 %.
 *
 * <p>Shifting a kilogram from peas to rice saves 4 and loses 0.4 of protein, from peas to lentils 2 and 0.1, from
 * lentils to rice 2 and 0.3. The cheapest blend is two thirds lentils and one third rice, at 7/3.
 */
class LeastChangeTest {
    private static final SmallKitchen KITCHEN = new SmallKitchen(
            """
            {"id": "rice", "values": {"PROCNT": 0}}, {"id": "peas", "values": {"PROCNT": 40}},
            {"id": "lentils", "values": {"PROCNT": 30}}""", "rice,s,1,kg,\npeas,s,5,kg,\nlentils,s,3,kg,\n", "{\"property\": \"PROCNT\", \"min\": \"20 %\"}", "");

    /**
     * Nine hundredths of protein to spare: first peas become rice, 4 a kilogram, until 0.225 has moved and nothing is
     * to spare. From there each kilogram more of lentils lets 0.75 move and saves 1, until 0.5 has moved and no peas
     * are left.
     */
    @Test
    void a_formula_with_something_to_spare_falls_at_once() {
        var path = path(start("0.2", "0.5", "0.3"));
        assertThat(path.straight()).isTrue();
        assertThat(places(path))
                .containsExactly(
                        List.of(BigFraction.ZERO, fraction("18/5")),
                        List.of(fraction("9/40"), fraction("27/10")),
                        List.of(fraction("1/2"), fraction("7/3")));
        assertThat(shares(path, 1))
                .isEqualTo(Map.of("rice", fraction("17/40"), "peas", fraction("11/40"), "lentils", fraction("3/10")));
    }

    /**
     * Three hundredths of protein are missing. Rice to peas mends that with the least moved, 0.075, for 0.3 more than
     * is paid now; to lentils it takes 0.1 and costs 0.2 more; then peas and rice become lentils, 1 a kilogram.
     */
    @Test
    void a_formula_that_breaks_a_bound_is_mended_first() {
        assertThat(places(path(start("0.5", "0.2", "0.3"))))
                .containsExactly(
                        List.of(fraction("3/40"), fraction("27/10")),
                        List.of(fraction("1/10"), fraction("13/5")),
                        List.of(fraction("11/30"), fraction("7/3")));
    }

    @Test
    void the_cheapest_blend_has_nowhere_to_go() {
        var start = new Start(
                KITCHEN.brief(),
                Map.of(new Use("rice", "mix"), fraction("1/3"), new Use("lentils", "mix"), fraction("2/3")));
        assertThat(places(path(start))).containsExactly(List.of(BigFraction.ZERO, fraction("7/3")));
        var few = few(start, 3);
        assertThat(few).hasSize(1);
        assertThat(best(few.get(0)).changed()).isEmpty();
    }

    /** Of two changes peas to lentils are best: all 5 kg of them, which loses 0.05 of protein. */
    @Test
    void two_changes_bring_most_of_the_saving_and_three_all_of_it_in_whole_grams() {
        var few = few(start("0.2", "0.5", "0.3"), 4);
        assertThat(few).hasSize(3);
        assertThat(best(few.get(0)).changed()).isEmpty();
        assertThat(best(few.get(0)).costPerKg()).isEqualTo(fraction("18/5"));
        assertThat(best(few.get(1)).changed()).containsExactly("lentils", "peas");
        assertThat(best(few.get(1)).costPerKg()).isEqualTo(fraction("13/5"));
        assertThat(best(few.get(1)).proved()).isTrue();
        assertThat(best(few.get(2)).leastPerKg()).isEqualTo(fraction("7/3"));
        // two thirds of 10 kg are no whole grams: 6667 g of lentils and 3333 g of rice
        assertThat(best(few.get(2)).costPerKg()).isEqualTo(fraction("23334/10000"));
        assertThat(best(few.get(2)).weighed()).isTrue();
    }

    @Test
    void one_change_cannot_mend_a_formula_and_two_can() {
        var few = few(start("0.5", "0.2", "0.3"), 2);
        assertThat(few.get(0).best()).isInstanceOf(Impossible.class);
        assertThat(best(few.get(1)).changed()).containsExactly("lentils", "rice");
        assertThat(best(few.get(1)).costPerKg()).isEqualTo(fraction("13/5"));
    }

    /** With the rice kept peas become lentils, 2 a kilogram, until none are left. */
    @Test
    void what_is_kept_does_not_move() {
        var kept = start("0.2", "0.5", "0.3").keeping(Set.of("rice"));
        assertThat(places(path(kept)))
                .containsExactly(
                        List.of(BigFraction.ZERO, fraction("18/5")), List.of(fraction("1/2"), fraction("13/5")));
        assertThat(MovePath.of(Planners.FULL, start("0.9", "0.1", "0").keeping(Set.of("rice"))))
                .isInstanceOf(Impossible.class);
    }

    /** Without peas on the list all of them must go: into lentils 2 a kilogram less, with protein enough to spare. */
    @Test
    void what_nobody_sells_must_go() {
        var brief = KITCHEN.withPrices("rice,s,1,kg,\nlentils,s,3,kg,\n").brief();
        var start = new Start(brief, start("0.2", "0.5", "0.3").shares());
        assertThat(start.homeless()).containsExactly("peas");
        var points = places(path(start));
        assertThat(points.get(0)).containsExactly(fraction("1/2"), fraction("7/3"));
        assertThat(few(start, 2).get(0).best()).isInstanceOf(Impossible.class);
        var two = best(few(start, 2).get(1));
        assertThat(two.changed()).containsExactly("lentils", "peas");
        assertThat(two.costPerKg()).isEqualTo(fraction("13/5"));
    }

    private static MovePath path(Start start) {
        return MovePath.of(Planners.FULL, start).orElseThrow();
    }

    private static List<FewChanges.Few> few(Start start, int most) {
        var least = Planners.FULL.cheapest(start.brief()).orElseThrow().costPerKg();
        return new FewChanges(Planners.FULL, start).upTo(most, least);
    }

    private static Best best(FewChanges.Few few) {
        return few.best().orElseThrow();
    }

    private static Start start(String rice, String peas, String lentils) {
        var shares = Map.of("rice", rice, "peas", peas, "lentils", lentils).entrySet().stream()
                .filter(each -> !each.getValue().equals("0"))
                .collect(Collectors.toMap(
                        each -> new Use(each.getKey(), "mix"), each -> SmallKitchen.number(each.getValue())));
        return new Start(KITCHEN.brief(), shares);
    }

    private static List<List<BigFraction>> places(MovePath path) {
        return path.points().stream()
                .map(point -> List.of(point.moved(), point.costPerKg()))
                .toList();
    }

    private static Map<String, BigFraction> shares(MovePath path, int point) {
        return path.points().get(point).blend().lines().stream()
                .collect(Collectors.toMap(line -> line.use().ingredient(), line -> line.share()));
    }

    private static BigFraction fraction(String text) {
        return BigFraction.parse(text);
    }
}
