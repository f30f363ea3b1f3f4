package panade.nudge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Decision;
import panade.certify.Decision.Found;
import panade.domain.Blend;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.plan.Planner;

/**
 * The best blends in which at most so many ingredients weigh something else than in the formula. The batch keeps its
 * weight, so what makes up for a change is a change as well: one alone can but shift an ingredient between stages.
 */
public final class FewChanges {
    private final Planner planner;
    private final Start start;
    private final MoveModel moves;
    private final Weighable weighable;

    /** The changes of a formula. */
    public FewChanges(Planner planner, Start start) {
        this.planner = planner;
        this.start = start;
        this.moves = MoveModel.of(planner, start);
        this.weighable = new Weighable(planner, moves);
    }

    /**
     * What so many changes come to.
     *
     * @param changes how many ingredients may change at most
     * @param best the best blend, or why there is none
     */
    public record Few(int changes, Decision<Best> best) {}

    /**
     * A blend with few changes.
     *
     * @param blend as it can be weighed where it can
     * @param changed ids of the ingredients that weigh something else
     * @param leastPerKg no blend with so many changes costs less, proved in exact fractions
     * @param proved whether that is the cost of the cheapest at any weights; false where other choices are not ruled
     *     out
     * @param weighed whether every change is whole steps of the scale; else no such blend was found that keeps every
     *     bound
     */
    public record Best(Blend blend, Set<String> changed, BigFraction leastPerKg, boolean proved, boolean weighed) {
        /** Money per kilogram of batch. */
        public BigFraction costPerKg() {
            return blend.costPerKg();
        }
    }

    /**
     * The best blends with one change at most, with two, and so on; the last is as cheap as can be, or has all the
     * changes asked for.
     *
     * @param most how many changes to go to
     * @param least what the cheapest blend of all costs
     */
    public List<Few> upTo(int most, BigFraction least) {
        var all = new ArrayList<Few>();
        BigFraction known = null;
        for (int changes = 1; changes <= most; changes++) {
            var best = exact(changes, known);
            known = best.found().map(LeastPoint::cost).orElse(known);
            all.add(new Few(changes, best.map(this::best)));
            if (least.equals(known)) {
                break;
            }
        }
        return all;
    }

    private Decision<LeastPoint> exact(int changes, @Nullable BigFraction known) {
        var model = new FewModel(planner, moves, known).changingAtMost(changes);
        return LeastPoint.of(planner, model);
    }

    private Best best(LeastPoint cheapest) {
        var exact = moves.blend(nearest(cheapest).optimum().point());
        var steps = weighable.in(exact, cheapest.optimum().model(), start.changedIn(exact));
        var blend = steps.orElse(exact);
        return new Best(blend, start.changedIn(blend), cheapest.bound(), cheapest.isProved(), steps.isPresent());
    }

    /** Among the cheapest with the same switches the one that moves least. */
    private LeastPoint nearest(LeastPoint cheapest) {
        var model = cheapest.optimum().model();
        var under =
                new MixedModel(model.with(new Row("cost", model.costs(), Sense.AT_MOST, cheapest.cost())), Set.of());
        return moves.leastMoved(planner, under) instanceof Found<LeastPoint> nearest ? nearest.value() : cheapest;
    }
}
