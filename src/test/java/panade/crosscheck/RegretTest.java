package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.plan.Planner;
import panade.quotes.Comparing;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;

/**
 * The safest blend against its dual, searched by force: by the minimax theorem (von Neumann, 1928) the least worst
 * regret is the most that any mixture of the lists' prices costs above the same mixture of their least costs.
 */
class RegretTest {
    private static final Planner PLANNER = Planners.LINEAR;
    private static final int PARTS = 12;
    private static final int HALVINGS = 30;
    private static final BigFraction NEAR = BigFraction.of(1, 1_000_000);

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 25, edgeCases = EdgeCasesMode.NONE)
    void the_least_worst_regret_is_the_most_of_all_price_mixtures(
            @ForAll("problems") RawProblem problem, @ForAll long seed) {
        var brief = Answer.blended(problem, new OrToolsSolver()).brief();
        var lists = List.of(one(brief), repriced(one(brief), new Random(seed)));
        var comparison = Comparing.of(PLANNER, List.of("a", "b"), lists, lists.get(0));
        var regret = comparison.regret().orElseThrow().perKg();
        var best = lists.stream().map(RegretTest::cost).toList();
        var most = BigFraction.ZERO;
        int where = 0;
        for (int i = 0; i <= PARTS; i++) {
            var gain = gain(lists, best, BigFraction.of(i, PARTS));
            assertThat(gain.subtract(regret).signum()).isNotPositive();
            where = gain.subtract(most).signum() > 0 ? i : where;
            most = gain.subtract(most).signum() > 0 ? gain : most;
        }
        var top = climbed(lists, best, BigFraction.of(Math.max(0, where - 1), PARTS), BigFraction.of(1, PARTS));
        assertThat(regret.subtract(top).subtract(NEAR).signum()).isNotPositive();
        Statistics.label("regret").collect(regret.signum() > 0);
    }

    /** The top of a concave function, by thirds. */
    private static BigFraction climbed(List<Brief> lists, List<BigFraction> best, BigFraction from, BigFraction half) {
        var low = from;
        var high = from.add(half.multiply(2));
        for (int i = 0; i < HALVINGS; i++) {
            var third = high.subtract(low).divide(3);
            var left = gain(lists, best, low.add(third));
            var right = gain(lists, best, high.subtract(third));
            if (left.subtract(right).signum() < 0) {
                low = low.add(third);
            } else {
                high = high.subtract(third);
            }
        }
        return gain(lists, best, low.add(high).divide(2));
    }

    private static BigFraction gain(List<Brief> lists, List<BigFraction> best, BigFraction part) {
        var rest = BigFraction.ONE.subtract(part);
        var offers = new ArrayList<Offer>();
        for (int i = 0; i < lists.get(0).offers().size(); i++) {
            var a = lists.get(0).offers().get(i);
            var b = lists.get(1).offers().get(i);
            offers.add(
                    a.withPrice(a.pricePerKg().multiply(rest).add(b.pricePerKg().multiply(part))));
        }
        var mixed = cost(lists.get(0).offering(offers));
        return mixed.subtract(best.get(0).multiply(rest)).subtract(best.get(1).multiply(part));
    }

    /** One offer for each ingredient, without end, so that mixing prices is mixing lists. */
    private static Brief one(Brief brief) {
        var offers = new ArrayList<Offer>();
        brief.offers().stream()
                .filter(offer ->
                        offers.stream().noneMatch(had -> had.ingredient().equals(offer.ingredient())))
                .forEach(offer -> offers.add(new Offer(
                        offer.id(),
                        offer.ingredient(),
                        offer.supplier(),
                        offer.pricePerKg(),
                        null,
                        null,
                        null,
                        "",
                        offer.origin())));
        return brief.offering(offers);
    }

    private static Brief repriced(Brief brief, Random random) {
        return brief.offering(brief.offers().stream()
                .map(offer ->
                        offer.withPrice(offer.pricePerKg().multiply(BigFraction.of(50 + random.nextInt(150), 100))))
                .toList());
    }

    private static BigFraction cost(Brief brief) {
        return PLANNER.cheapest(brief).orElseThrow().costPerKg();
    }
}
