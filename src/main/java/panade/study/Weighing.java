package panade.study;

import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.domain.Use;
import panade.model.LinearModel.Sense;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.solver.MixedAnswer.Found;
import panade.study.BatchSheet.Fail;
import panade.study.BatchSheet.Line;
import panade.study.WeighingModel.Limit;
import panade.study.WeighingModel.Share;

/** Rounds a blend to weights that a scale can show, so that every bound is still met. */
public final class Weighing {
    private static final Duration LIMIT = Duration.ofSeconds(20);
    /** Tried in turn: staying that part of a step inside each limit makes up for binary rounding in the search. */
    private static final List<BigFraction> MARGINS =
            List.of(BigFraction.ZERO, BigFraction.of(1, 100_000), BigFraction.of(1, 1000));

    /** How many times finer a scale is tried. */
    private static final List<Integer> FINER = List.of(2, 5, 10, 20, 50, 100, 200, 500, 1000);

    private final Planner planner;
    private final Blended best;
    private final Brief brief;

    private Weighing(Planner planner, Blended best) {
        this.planner = planner;
        this.best = best;
        this.brief = best.brief();
    }

    /** The sheet for a blend. */
    public static BatchSheet of(Planner planner, Blended best, Scales scales) {
        return new Weighing(planner, best).sheet(scales);
    }

    private BatchSheet sheet(Scales scales) {
        var shares = shares(scales);
        var model = new WeighingModel(brief, shares);
        var met = meeting(model, shares);
        if (met.isPresent()) {
            return sheet(model, shares, met.get(), null);
        }
        var nearest = weights(shares, search(model, BigFraction.ZERO, true).orElseGet(() -> rounded(shares)));
        return sheet(model, shares, nearest, fineEnough(scales));
    }

    /** Weights that meet every limit, checked exactly; empty when the search finds none. */
    private Optional<List<BigFraction>> meeting(WeighingModel model, List<Share> shares) {
        for (var margin : MARGINS) {
            var found = search(model, margin, false).map(steps -> weights(shares, steps));
            if (found.isEmpty()) {
                return Optional.empty();
            }
            boolean meets = model.limits().stream()
                    .allMatch(limit -> limit.room(found.get()).signum() >= 0);
            if (meets) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Map<Integer, BigInteger>> search(WeighingModel model, BigFraction margin, boolean giving) {
        return planner.search(model.model(margin, giving), LIMIT) instanceof Found found
                ? Optional.of(found.values())
                : Optional.empty();
    }

    private List<Share> shares(Scales scales) {
        var weights = new LinkedHashMap<Use, BigFraction>();
        best.blend().lines().forEach(line -> weights.merge(line.use(), line.share(), BigFraction::add));
        var shares = new ArrayList<Share>();
        weights.forEach((use, share) -> {
            var kilograms = share.multiply(brief.batch().base());
            shares.add(new Share(use, kilograms, scales.stepFor(stage(use), kilograms)));
        });
        return shares;
    }

    private Stage stage(Use use) {
        return brief.stages().stream()
                .filter(stage -> stage.id().equals(use.stage()))
                .findFirst()
                .orElseThrow();
    }

    private static Map<Integer, BigInteger> rounded(List<Share> shares) {
        var steps = new LinkedHashMap<Integer, BigInteger>();
        for (int l = 0; l < shares.size(); l++) {
            var number = shares.get(l).kilograms().divide(shares.get(l).step().base());
            steps.put(l, Decimal.round(number, 0).toBigInteger());
        }
        return steps;
    }

    private static List<BigFraction> weights(List<Share> shares, Map<Integer, BigInteger> steps) {
        var weights = new ArrayList<BigFraction>();
        for (int l = 0; l < shares.size(); l++) {
            var number = BigFraction.of(steps.getOrDefault(l, BigInteger.ZERO));
            weights.add(shares.get(l).step().base().multiply(number));
        }
        return weights;
    }

    private @Nullable Quantity fineEnough(Scales scales) {
        for (int times : FINER) {
            var number = scales.step().number().divide(times);
            var unit = scales.step().unit();
            var text = Decimal.significant(number, 6).toPlainString() + " " + unit.symbol();
            var step = Quantity.of(number, unit, text);
            var shares = shares(new Scales(step, null, BigFraction.ZERO));
            if (meeting(new WeighingModel(brief, shares), shares).isPresent()) {
                return step;
            }
        }
        return null;
    }

    private BatchSheet sheet(
            WeighingModel model, List<Share> shares, List<BigFraction> weights, @Nullable Quantity fineEnough) {
        var lines = new ArrayList<Line>();
        for (int l = 0; l < shares.size(); l++) {
            var share = shares.get(l);
            var weight = weights.get(l);
            lines.add(new Line(
                    share.use(),
                    share.kilograms(),
                    weight,
                    share.step(),
                    weight.subtract(down(model, weights, l)),
                    up(model, weights, l).map(weight::add).orElse(null)));
        }
        return new BatchSheet(
                best,
                lines,
                weighed(shares, weights),
                fails(model, shares, weights),
                fails(model, shares, weights(shares, rounded(shares))),
                fineEnough);
    }

    /** How far a weight alone may fall; to nothing at most. */
    private static BigFraction down(WeighingModel model, List<BigFraction> weights, int line) {
        return model.limits().stream()
                .flatMap(limit -> reach(limit, weights, line, -1).stream())
                .reduce(weights.get(line), Weighing::smaller);
    }

    private static Optional<BigFraction> up(WeighingModel model, List<BigFraction> weights, int line) {
        return model.limits().stream()
                .flatMap(limit -> reach(limit, weights, line, 1).stream())
                .reduce(Weighing::smaller);
    }

    private static BigFraction smaller(BigFraction a, BigFraction b) {
        return a.subtract(b).signum() <= 0 ? a : b;
    }

    /** How far a weight may go one way before a limit breaks; empty when it never does. */
    private static Optional<BigFraction> reach(Limit limit, List<BigFraction> weights, int line, int way) {
        var change =
                limit.row().coefficients().getOrDefault(line, BigFraction.ZERO).multiply(way);
        boolean least = limit.row().sense() == Sense.AT_LEAST;
        var lost = least ? change.negate() : change;
        if (lost.signum() <= 0) {
            return Optional.empty();
        }
        var room = limit.room(weights);
        return Optional.of(room.signum() <= 0 ? BigFraction.ZERO : room.divide(lost));
    }

    /** The blend that the weights make, its suppliers in the proportion of the exact one. */
    private Blend weighed(List<Share> shares, List<BigFraction> weights) {
        var total = weights.stream().reduce(BigFraction.ZERO, BigFraction::add);
        var lines = new ArrayList<Blend.Line>();
        for (int l = 0; l < shares.size(); l++) {
            var share = shares.get(l);
            var times = weights.get(l)
                    .divide(share.kilograms())
                    .multiply(brief.batch().base())
                    .divide(total);
            best.blend().lines().stream()
                    .filter(line -> line.use().equals(share.use()))
                    .forEach(line -> lines.add(new Blend.Line(
                            line.use(),
                            line.offer(),
                            line.share().multiply(times),
                            line.costPerKg().multiply(times))));
        }
        return new Blend(List.copyOf(lines), BigFraction.ONE);
    }

    private List<Fail> fails(WeighingModel model, List<Share> shares, List<BigFraction> weights) {
        var total = weights.stream().reduce(BigFraction.ZERO, BigFraction::add);
        var unit = brief.batch().unit();
        var made = brief.making(
                Quantity.of(unit.fromBase(total), unit, brief.batch().text()));
        var audit = new Audit(made, weighed(shares, weights));
        var fails = new ArrayList<Fail>();
        for (var limit : model.limits()) {
            if (limit.room(weights).signum() < 0) {
                bound(limit).ifPresent(bound -> fails.add(fail(bound, limit, audit)));
            }
        }
        return fails;
    }

    private Optional<Bound> bound(Limit limit) {
        return brief.bounds().stream()
                .filter(bound -> bound.path().equals(limit.path()))
                .findFirst();
    }

    private static Fail fail(Bound bound, Limit limit, Audit audit) {
        boolean least = limit.row().sense() == Sense.AT_LEAST;
        var needs = least ? bound.min() : bound.max();
        return new Fail(
                bound.path() + (least ? "/min" : "/max"),
                bound.name(),
                audit.value(bound).orElse(null),
                bound.unit().fromBase(Objects.requireNonNull(needs).base()),
                bound.unit());
    }
}
