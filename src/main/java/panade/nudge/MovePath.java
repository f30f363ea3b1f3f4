package panade.nudge;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Decision;
import panade.certify.Verdict.Optimum;
import panade.certify.sensitivity.Sensitivity;
import panade.domain.Blend;
import panade.model.LinearForm;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.Unproved;
import panade.plan.Planner;

/**
 * The least cost over the weight moved away from a formula, from the least that must move to the cheapest blend of all.
 *
 * @param points in rising order of what is moved, each solved on its own and proved; the cost falls from each to the
 *     next
 * @param straight whether it is proved that the cost runs straight from each point to the next; where rules leave a
 *     choice of ingredients it may lie lower between them
 */
public record MovePath(List<Point> points, boolean straight) {
    /** More points than any path that a person would read. */
    private static final int MAX_POINTS = 400;

    public MovePath {
        points = List.copyOf(points);
    }

    /**
     * A place on the path.
     *
     * @param moved half the sum of the absolute changes of shares
     * @param blend the cheapest blend that moves no more
     */
    public record Point(BigFraction moved, Blend blend) {
        /** Money per kilogram of batch. */
        public BigFraction costPerKg() {
            return blend.costPerKg();
        }
    }

    /** The path from a formula; impossible where no blend meets the brief. */
    public static Decision<MovePath> of(Planner planner, Start start) {
        var model = MoveModel.of(planner, start);
        return model.leastMoved(planner, model.model())
                .fold(
                        least -> planner.cheapest(start.brief())
                                .map(best -> new Walk(planner, model, best.costPerKg())
                                        .from(proved(least).cost())),
                        Decision.Impossible::new,
                        Decision.Undecided::new);
    }

    private static LeastPoint proved(LeastPoint point) {
        if (!point.isProved()) {
            throw new Unproved("the rules leave so many choices that a place of the path could not be proved");
        }
        return point;
    }

    /** From place to place: the rate at one reaches to the next, and where it ends another choice leads on. */
    private record Walk(Planner planner, MoveModel model, BigFraction target) {

        MovePath from(BigFraction least) {
            var points = new ArrayList<Point>();
            var slopes = new ArrayList<BigFraction>();
            var at = least;
            while (true) {
                var here = cheapest(at);
                if (!isLinear()) {
                    // another choice may have come in before, and cost as little there
                    at = leastFor(here.cost());
                    here = cheapest(at);
                }
                add(points, slopes, new Point(at, blend(here, at)));
                if (here.cost().equals(target)) {
                    break;
                }
                if (points.size() > MAX_POINTS) {
                    throw new Unproved("the path still turned after " + MAX_POINTS + " places");
                }
                var rate = rate(here.optimum());
                slopes.add(rate.rate());
                at = next(at, rate);
            }
            return new MovePath(points, isLinear());
        }

        private boolean isLinear() {
            return model.model().whole().isEmpty();
        }

        private LeastPoint cheapest(BigFraction most) {
            return proved(LeastPoint.of(planner, model.movingAtMost(most)).orElseThrow());
        }

        /** A place, and without the one before it where nothing turned there. */
        private void add(List<Point> points, List<BigFraction> slopes, Point point) {
            int last = points.size() - 1;
            if (last >= 0) {
                requireFall(points.get(last), slopes.get(last), point);
            }
            if (last >= 1 && slopes.get(last).equals(slopes.get(last - 1)) && isSmooth(points, slopes)) {
                points.remove(last);
                slopes.remove(last);
            }
            points.add(point);
        }

        private boolean isSmooth(List<Point> points, List<BigFraction> slopes) {
            int last = points.size() - 1;
            return isOnLine(points.get(last - 1), slopes.get(last - 1), points.get(last));
        }

        private static boolean isOnLine(Point from, BigFraction slope, Point to) {
            var run = to.moved().subtract(from.moved());
            return from.costPerKg().add(slope.multiply(run)).equals(to.costPerKg());
        }

        /** A convex cost that ends where its first rate leads runs straight: so each stretch is proved by its ends. */
        private void requireFall(Point from, BigFraction slope, Point to) {
            boolean falls = to.costPerKg().compareTo(from.costPerKg()) < 0;
            if (!falls || (isLinear() && !isOnLine(from, slope, to))) {
                throw new Unproved("a stretch of the path could not be proved");
            }
        }

        private Blend blend(LeastPoint here, BigFraction at) {
            var blend = model.blend(here.optimum().point());
            if (!model.start().movedTo(blend).equals(at)) {
                throw new Unproved("measured again, a blend of the path moves another weight than the model says");
            }
            return blend;
        }

        private Sensitivity.Rate rate(Optimum optimum) {
            return new Sensitivity(optimum)
                    .raising(model.ceiling())
                    .orElseThrow(() -> new Unproved("the rate of the path could not be found"));
        }

        private BigFraction next(BigFraction at, Sensitivity.Rate rate) {
            var reach = rate.reach();
            return rate.rate().signum() < 0 && reach != null ? at.add(reach) : leastFor(target);
        }

        /** The least that must move for a cost. */
        private BigFraction leastFor(BigFraction cost) {
            var costs = LinearForm.over(
                    model.model().relaxed().columns().size(),
                    j -> model.model().relaxed().columns().get(j).cost());
            var under = model.with(new Row("cost", costs, Sense.AT_MOST, cost));
            return proved(model.leastMoved(planner, under).orElseThrow()).cost();
        }
    }
}
