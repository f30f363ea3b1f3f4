package panade.vary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.certify.Verdict.Impossible;
import panade.certify.Verdict.Optimum;
import panade.compile.BriefCompiler;
import panade.domain.purchase.OfferId;
import panade.model.Unproved;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.reach.ShelfTarget;
import panade.vary.CompositionStudy.Broken;
import panade.vary.CompositionStudy.Costs;
import panade.vary.KeptSide.Standing;
import panade.vary.PriceStudy.Level;

/**
 * Draws what ingredients hold together with the prices. Rows change with what is drawn, so no basis of another draw
 * carries over: every draw is compiled, solved and proved like a brief of its own. The prices of a draw are those that
 * {@link Varying} draws under the same number.
 */
public final class VaryingCompositions {
    private static final int PLACES = 12;

    private final Planner planner;
    private final Blended today;
    private final DrawnPrices prices;
    private final DrawnValues values;
    private final List<KeptSide> sides;

    private VaryingCompositions(Planner planner, Blended today, DrawnPrices prices, DrawnValues values) {
        this.planner = planner;
        this.today = today;
        this.prices = prices;
        this.values = values;
        this.sides = KeptSide.of(today.brief());
    }

    /**
     * The study of a blend whose ingredients vary.
     *
     * @param spreads by offer, how far its price may be off on both sides, as a fraction of it
     * @param threads how many to use; the result does not depend on it
     * @return empty when no ingredient of the brief states a spread
     */
    public static Optional<CompositionStudy> of(
            Planner planner, Blended today, Map<OfferId, BigFraction> spreads, int draws, long seed, int threads) {
        var values = DrawnValues.of(today.brief(), seed);
        if (values.count() == 0) {
            return Optional.empty();
        }
        var prices = DrawnPrices.of(today, spreads, seed);
        var varying = new VaryingCompositions(planner, today, prices, values);
        return Optional.of(varying.study(varying.all(draws, threads)));
    }

    /** One draw: the least cost, null when there is no blend, and how today's blend stands. */
    private record Draw(@Nullable BigFraction cost, List<Standing> kept) {}

    /** In the order of their numbers, whichever thread came by them. */
    private List<Draw> all(int draws, int threads) {
        var pool = new ForkJoinPool(threads);
        try {
            return pool.invoke(ForkJoinTask.adapt(() ->
                    IntStream.range(0, draws).parallel().mapToObj(this::draw).toList()));
        } finally {
            pool.shutdown();
        }
    }

    private Draw draw(int number) {
        var brief = today.brief().withIngredientSet(values.set(number));
        var audit = new Audit(brief, today.blend());
        var model =
                BriefCompiler.compile(brief).model().withCosts(prices.model().costs(number));
        var verdict = planner.verdict(model);
        if (!(verdict instanceof Optimum) && !(verdict instanceof Impossible)) {
            throw new Unproved("the least cost of a draw could not be proved");
        }
        var cost = verdict instanceof Optimum optimum ? rounded(model.costAt(optimum.point())) : null;
        return new Draw(cost, sides.stream().map(side -> side.standing(audit)).toList());
    }

    /** Exact costs of unlike draws have no common denominator of any use; a trillionth is far below a coin. */
    private static BigFraction rounded(BigFraction cost) {
        return Decimal.of(Decimal.round(cost, PLACES));
    }

    private CompositionStudy study(List<Draw> draws) {
        var costs =
                draws.stream().map(Draw::cost).filter(Objects::nonNull).sorted().toList();
        long kept = draws.stream()
                .filter(draw -> draw.kept().stream().noneMatch(Standing::broken))
                .count();
        return new CompositionStudy(
                draws.size(),
                values.count(),
                draws.size() - costs.size(),
                (int) kept,
                broken(draws),
                ShelfTarget.hopedPerKg(today.brief())
                        .map(perKg -> new PriceStudy.Target(perKg, met(costs, perKg)))
                        .orElse(null),
                costs.isEmpty() ? null : costs(costs));
    }

    private static long met(List<BigFraction> costs, BigFraction perKg) {
        return costs.stream().filter(cost -> cost.compareTo(perKg) <= 0).count();
    }

    private List<Broken> broken(List<Draw> draws) {
        var broken = new ArrayList<Broken>();
        for (int i = 0; i < sides.size(); i++) {
            int side = i;
            var standings = draws.stream().map(draw -> draw.kept().get(side)).toList();
            sides.get(side).broken(standings).ifPresent(broken::add);
        }
        broken.sort(Comparator.comparing(Broken::draws).reversed().thenComparing(Broken::path));
        return broken;
    }

    private static Costs costs(List<BigFraction> ascending) {
        var sum = ascending.stream().reduce(BigFraction.ZERO, BigFraction::add);
        return new Costs(
                sum.divide(ascending.size()),
                ascending.get(0),
                ascending.get(ascending.size() - 1),
                Varying.LEVELS.stream()
                        .map(percent -> new Level(
                                BigFraction.of(percent, 100), ascending.get(rank(percent, ascending.size()) - 1)))
                        .toList());
    }

    /** The least number of draws that is that share of them. */
    static int rank(int percent, int draws) {
        return (int) Math.max(1, (percent * (long) draws + 99) / 100);
    }
}
