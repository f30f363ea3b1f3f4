package panade.vary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.LongUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.BasicPoint;
import panade.certify.Verdict.Optimum;
import panade.certify.sensitivity.Sensitivity;
import panade.compile.CompiledBrief;
import panade.compile.Limit;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.model.Basis;
import panade.model.Unproved;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.reach.ShelfTarget;
import panade.scenario.Distribution;
import panade.scenario.ScenarioModel;
import panade.scenario.Scenarios;
import panade.vary.PriceStudy.BindingSide;
import panade.vary.PriceStudy.Kept;
import panade.vary.PriceStudy.Level;
import panade.vary.PriceStudy.Proof;
import panade.vary.PriceStudy.Use;
import panade.vary.PriceStudy.Weight;

/** Draws all prices many times and looks at what the best blend does. */
public final class Varying {
    private static final int SAMPLE = 100;
    static final List<Integer> LEVELS = List.of(5, 25, 50, 75, 95);
    private static final BigFraction BILLIONTH = BigFraction.of(1, 1_000_000_000);

    private final Planner planner;
    private final Blended today;
    private final CompiledBrief compiled;
    private final List<Offer> offers;
    private final List<String> ingredients;
    private final ScenarioModel model;
    private final Scenarios scenarios;

    private Varying(Planner planner, Blended today, Map<OfferId, BigFraction> spreads, long seed) {
        this.planner = planner;
        this.today = today;
        var priced = DrawnPrices.of(today, spreads, seed);
        this.compiled = priced.compiled();
        this.offers = priced.offers();
        this.ingredients = priced.ingredients();
        this.model = priced.model();
        this.scenarios = new Scenarios(model, this::solveExactly);
    }

    /**
     * The study of a blend's prices.
     *
     * @param spreads by offer, how far its price may be off on both sides, as a fraction of it; none for what is left
     *     out
     * @param threads how many to use; the result does not depend on it
     * @param proveAll whether every draw is solved again in exact fractions, not only a sample
     */
    public static PriceStudy of(
            Planner planner,
            Blended today,
            Map<OfferId, BigFraction> spreads,
            long draws,
            long seed,
            int threads,
            boolean proveAll) {
        var varying = new Varying(planner, today, spreads, seed);
        var target = ShelfTarget.hopedPerKg(today.brief());
        return varying.study(varying.scenarios.run(draws, threads, target), seed, proveAll);
    }

    private Basis solveExactly(List<BigFraction> costs) {
        if (planner.verdict(compiled.model().withCosts(costs)) instanceof Optimum optimum) {
            return optimum.basis();
        }
        throw new Unproved("the least cost of a draw could not be proved");
    }

    private PriceStudy study(Distribution found, long seed, boolean proveAll) {
        int safest = IntStream.range(0, found.standing().size())
                .boxed()
                .min(Comparator.comparing(found::worstRegret))
                .orElseThrow();
        return new PriceStudy(
                today,
                found.draws(),
                seed,
                found.mean(),
                found.deviation(),
                LEVELS.stream()
                        .map(percent -> BigFraction.of(percent, 100))
                        .map(share -> new Level(share, found.quantile(share)))
                        .toList(),
                leastCost(found.cheapestDraw()),
                leastCost(found.dearestDraw()),
                uses(found),
                touches(found),
                weights(found),
                kept(found, 0),
                kept(found, safest),
                found.standing().size(),
                ShelfTarget.hopedPerKg(today.brief())
                        .map(perKg -> new PriceStudy.Target(perKg, found.met()))
                        .orElse(null),
                proof(found.draws(), proveAll));
    }

    private BigFraction leastCost(long draw) {
        var costs = model.costs(draw);
        var point = new Sensitivity(today.proof()).leastPointAt(costs);
        return compiled.model().withCosts(costs).costAt(point);
    }

    private Proof proof(long draws, boolean all) {
        long count = all ? draws : Math.min(draws, SAMPLE);
        LongUnaryOperator place = all ? i -> i : i -> i * draws / count;
        long off = LongStream.range(0, count)
                .parallel()
                .map(place)
                .filter(draw -> isOff(leastCost(draw), scenarios.leastCost(draw)))
                .count();
        return new Proof(count, off);
    }

    private static boolean isOff(BigFraction proved, BigFraction found) {
        var allowed = proved.abs().multiply(BILLIONTH);
        return found.subtract(proved).abs().compareTo(allowed) > 0;
    }

    private Kept kept(Distribution found, int index) {
        var point = BasicPoint.of(compiled.model(), found.standing().get(index));
        return new Kept(
                Planner.measured(today.brief(), Planner.blendAt(today.brief(), compiled, point))
                        .orElseThrow(),
                found.meanRegret(index),
                found.worstRegret(index));
    }

    private List<Use> uses(Distribution found) {
        var uses = new ArrayList<Use>();
        for (int i = 0; i < ingredients.size(); i++) {
            if (found.used(i) > 0) {
                uses.add(new Use(ingredients.get(i), found.used(i), found.meanShare(i)));
            }
        }
        uses.sort(Comparator.comparing(Use::draws).reversed().thenComparing(Use::ingredient));
        return List.copyOf(uses);
    }

    private List<BindingSide> touches(Distribution found) {
        var touches = new ArrayList<BindingSide>();
        for (int i = 0; i < compiled.rows().size(); i++) {
            if (found.touched(i) > 0 && compiled.rows().get(i) instanceof Limit.OfNumber row) {
                var path = row instanceof Limit.OfBound of ? of.bound().path() : row.name();
                touches.add(new BindingSide(row.name(), path, row.side(), found.touched(i)));
            }
        }
        touches.sort(Comparator.comparing(BindingSide::draws).reversed().thenComparing(BindingSide::path));
        return List.copyOf(touches);
    }

    private List<Weight> weights(Distribution found) {
        var weights = new ArrayList<Weight>();
        for (int i = 0; i < offers.size(); i++) {
            if (model.draws().moves(i)) {
                weights.add(new Weight(offers.get(i), found.partOfVariance(i)));
            }
        }
        weights.sort(Comparator.comparing(Weight::part, Comparator.reverseOrder()));
        return List.copyOf(weights);
    }
}
