package panade.quotes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quotes.PriceComparison.Single;
import panade.testing.DemoBriefs;
import panade.testing.Planners;

/**
 * Fourer, Gay, Kernighan, "AMPL", 2nd ed. 2003, section 8.3: dinners under three price lists. The sum's least cost is
 * printed there; the least worst regret was computed independently with another solver. A package is a kilogram of a
 * batch of a hundred, so dollars are cost per kilogram times a hundred.
 */
class ComparingTest {
    private static final Path DINNERS = Path.of("src", "test", "resources", "published", "ampl_dietobj");
    private static final Planner PLANNER = Planners.LINEAR;
    private static final PriceComparison COMPARISON = compared();

    @Test
    void the_least_worst_regret_of_the_dinners_is_the_reference_one() {
        var regret = COMPARISON.regret().orElseThrow();
        assertThat(dollars(regret.perKg())).isCloseTo(new BigDecimal("0.629244075167"), within(new BigDecimal("1e-9")));
        assertThat(share(regret, "MTL")).isCloseTo(new BigDecimal("6.12424952144"), within(new BigDecimal("1e-8")));
        assertThat(share(regret, "SPG")).isCloseTo(new BigDecimal("5.07690547234"), within(new BigDecimal("1e-8")));
    }

    @Test
    void the_cheapest_blend_on_average_costs_the_published_sum() {
        var average = COMPARISON.average().orElseThrow();
        assertThat(dollars(average.perKg().multiply(3)))
                .isCloseTo(new BigDecimal("228.89067416"), within(new BigDecimal("1e-7")));
    }

    @Test
    void the_worst_regret_is_really_met_and_never_passed() {
        var regret = COMPARISON.regret().orElseThrow();
        var excesses = new ArrayList<BigFraction>();
        for (int j = 0; j < 3; j++) {
            var best = ((Blended) COMPARISON.best().get(j)).blend().costPerKg();
            excesses.add(regret.costs().get(j).subtract(best));
        }
        assertThat(excesses).contains(regret.perKg());
        assertThat(excesses).allMatch(excess -> excess.subtract(regret.perKg()).signum() <= 0);
    }

    @Test
    void no_lists_best_blend_regrets_less_than_the_safest() {
        var regret = COMPARISON.regret().orElseThrow().perKg();
        for (int i = 0; i < 3; i++) {
            var worst = BigFraction.ZERO;
            for (int j = 0; j < 3; j++) {
                var best = ((Blended) COMPARISON.best().get(j)).blend().costPerKg();
                var excess = COMPARISON.costOf().get(i).get(j).orElseThrow().subtract(best);
                worst = excess.subtract(worst).signum() > 0 ? excess : worst;
            }
            assertThat(worst.subtract(regret).signum()).isNotNegative();
        }
    }

    @Test
    void a_blend_whose_binder_is_sold_out_cannot_be_made_in_december() {
        var september = DemoBriefs.read("dumpling-filling", "september");
        var december = DemoBriefs.read("dumpling-filling", "december");
        var both = DemoBriefs.read("dumpling-filling", "september", "december");
        var comparison = Comparing.of(PLANNER, List.of("september", "december"), List.of(september, december), both);
        assertThat(comparison.costOf().get(0).get(1)).isEmpty();
        assertThat(comparison.costOf().get(0).get(0))
                .contains(((Blended) comparison.best().get(0)).blend().costPerKg());
    }

    private static PriceComparison compared() {
        var lists = Stream.of("s1", "s2", "s3")
                .map(name -> DINNERS.resolve("ingredient-sets/dinners/prices-" + name + ".csv"))
                .toList();
        var briefs = lists.stream().map(list -> read(List.of(list))).toList();
        return Comparing.of(PLANNER, List.of("s1", "s2", "s3"), briefs, read(lists));
    }

    private static Brief read(List<Path> lists) {
        var reading = Documents.readBrief(
                DINNERS.resolve("constraints/brief.json"), new Overrides(lists, null, List.of(), null));
        return ((Reading.Accepted<Brief>) reading).value();
    }

    private static BigDecimal dollars(BigFraction perKg) {
        return Decimal.round(perKg.multiply(100), 12);
    }

    private static BigDecimal share(Single single, String id) {
        return Decimal.round(single.blend().shareOf(id).multiply(100), 12);
    }
}
