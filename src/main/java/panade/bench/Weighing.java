package panade.bench;

import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.bench.BatchSheet.Line;
import panade.bench.WeighingModel.Giving;
import panade.bench.WeighingModel.Limit;
import panade.bench.WeighingModel.Share;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.domain.Use;
import panade.model.LinearModel.Sense;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.quantity.Quantity;
import panade.solver.MixedAnswer.Found;
import panade.solver.MixedAnswer.Infeasible;

/**
 * Rounds a blend to weights that a scale can show, so that every bound is still met. Where no weights meet a fixed
 * bound it is missed by as little as can be, and where that is not enough every bound may give; what is broken is told.
 */
public final class Weighing {
    /** For each search; a search for a finer scale gets a part of it. */
    private static final Duration LIMIT = Duration.ofSeconds(20);

    private static final Duration FINER_LIMIT = Duration.ofSeconds(4);
    /** Tried in turn: staying that part of a step inside each limit makes up for binary rounding in the search. */
    private static final List<BigFraction> MARGINS =
            List.of(BigFraction.ZERO, BigFraction.of(1, 100_000), BigFraction.of(1, 1000));

    /** How many times finer a scale is tried. */
    private static final List<Integer> FINER = List.of(2, 5, 10, 20, 50, 100, 200, 500, 1000);

    private final Planner planner;
    private final @Nullable Blended best;
    private final Brief brief;
    private final Blend exact;
    private final @Nullable MoveAtMost most;
    /** Whether a search that the sheet rests on ended before it was done. */
    private final AtomicBoolean endedEarly = new AtomicBoolean();

    private Weighing(Planner planner, @Nullable Blended best, Brief brief, Blend exact, @Nullable MoveAtMost most) {
        this.planner = planner;
        this.best = best;
        this.brief = brief;
        this.exact = exact;
        this.most = most;
    }

    /** The sheet for a proved blend. */
    public static BatchSheet of(Planner planner, Blended best, Scales scales) {
        return new Weighing(planner, best, best.brief(), best.blend(), null).sheet(scales);
    }

    /** The sheet for any blend of a brief's batch. */
    public static BatchSheet of(Planner planner, Brief brief, Blend blend, Scales scales) {
        return new Weighing(planner, null, brief, blend, null).sheet(scales);
    }

    /**
     * The sheet for a formula. No line moves further than it may, and bounds that the formula breaks itself, or of
     * which that is not known, are broken where nothing else is found.
     */
    public static BatchSheet of(Planner planner, Brief brief, Blend formula, Scales scales, MoveAtMost most) {
        var audit = new Audit(brief, formula);
        var known = brief.bounds().stream().filter(audit::isKnown).toList();
        var all = new Weighing(planner, null, brief.withBounds(known), formula, most);
        var kept = known.stream().filter(audit::isKept).toList();
        var keeping = new Weighing(planner, null, brief.withBounds(kept), formula, most);
        return all.sheet(scales, keeping);
    }

    private BatchSheet sheet(Scales scales, Weighing keeping) {
        var shares = shares(scales);
        var model = new WeighingModel(brief, shares);
        var keptModel = new WeighingModel(keeping.brief, shares);
        var weights = meeting(model, shares, LIMIT)
                .or(() -> keeping.meeting(keptModel, shares, LIMIT))
                .orElseGet(() -> keeping.nearest(keptModel, shares));
        endedEarly.compareAndSet(false, keeping.endedEarly.get());
        return sheet(model, shares, weights, null);
    }

    private BatchSheet sheet(Scales scales) {
        var shares = shares(scales);
        var model = new WeighingModel(brief, shares);
        var audit = audit(shares);
        var met = meeting(model, shares, LIMIT);
        if (met.isPresent()) {
            return sheet(model, shares, met.get(), null);
        }
        var nearest = nearest(model, shares);
        boolean unsure = endedEarly.get();
        var finer = audit.fails(nearest).isEmpty() ? null : fineEnough(scales);
        // a search for a finer scale says nothing of this sheet
        endedEarly.set(unsure);
        return sheet(model, shares, nearest, finer);
    }

    private WeighedBatch audit(List<Share> shares) {
        return new WeighedBatch(brief, exact, shares.stream().map(Share::use).toList());
    }

    /** Weights that meet every limit, checked exactly; empty when the search finds none. */
    private Optional<List<BigFraction>> meeting(WeighingModel model, List<Share> shares, Duration limit) {
        var audit = audit(shares);
        for (var margin : MARGINS) {
            var found = search(model, margin, Giving.NONE, limit).map(steps -> weights(shares, steps));
            if (found.isEmpty() || audit.fails(found.get()).isEmpty()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Weights that miss fixed bounds alone if such are found, else that break as little as can be. */
    private List<BigFraction> nearest(WeighingModel model, List<Share> shares) {
        var audit = audit(shares);
        var missing = search(model, MARGINS.get(1), Giving.FIXED, LIMIT)
                .map(steps -> weights(shares, steps))
                .filter(weights -> audit.fails(weights).stream().allMatch(BatchSheet.Fail::fixed));
        return missing.orElseGet(() -> weights(
                shares,
                search(model, BigFraction.ZERO, Giving.ALL, LIMIT).orElseGet(() -> heaviest(shares, rounded(shares)))));
    }

    private Optional<Map<Integer, BigInteger>> search(
            WeighingModel model, BigFraction margin, Giving giving, Duration limit) {
        var answer = planner.search(model.model(margin, giving), limit);
        boolean done = answer instanceof Found found ? found.finished() : answer instanceof Infeasible;
        endedEarly.compareAndSet(false, !done);
        return answer instanceof Found found ? Optional.of(found.values()) : Optional.empty();
    }

    private List<Share> shares(Scales scales) {
        var weights = new LinkedHashMap<Use, BigFraction>();
        exact.lines().forEach(line -> weights.merge(line.use(), line.share(), BigFraction::add));
        var shares = new ArrayList<Share>();
        weights.forEach((use, share) -> {
            var kilograms = share.multiply(brief.batch().base());
            var moved = most == null ? null : most.of(kilograms);
            shares.add(new Share(use, kilograms, scales.stepFor(stage(use), kilograms), moved));
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

    /** The same, or one step of what weighs most where all would come to nothing. */
    private static Map<Integer, BigInteger> heaviest(List<Share> shares, Map<Integer, BigInteger> steps) {
        if (steps.values().stream().anyMatch(number -> number.signum() > 0)) {
            return steps;
        }
        int heaviest = 0;
        for (int l = 1; l < shares.size(); l++) {
            boolean more =
                    shares.get(l).kilograms().compareTo(shares.get(heaviest).kilograms()) > 0;
            heaviest = more ? l : heaviest;
        }
        return Map.of(heaviest, BigInteger.ONE);
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
            if (meeting(new WeighingModel(brief, shares), shares, FINER_LIMIT).isPresent()) {
                return step;
            }
        }
        return null;
    }

    private BatchSheet sheet(
            WeighingModel model, List<Share> shares, List<BigFraction> weights, @Nullable Quantity fineEnough) {
        var audit = audit(shares);
        var lines = new ArrayList<Line>();
        for (int l = 0; l < shares.size(); l++) {
            lines.add(line(model, shares.get(l), weights, l, audit));
        }
        return new BatchSheet(
                brief,
                best,
                lines,
                audit.blend(weights),
                audit.fails(weights),
                audit.fails(weights(shares, rounded(shares))),
                fineEnough,
                endedEarly.get());
    }

    /** A line whose band is what the model's limits leave, as far as weighing its ends says the same. */
    private static Line line(
            WeighingModel model, Share share, List<BigFraction> weights, int line, WeighedBatch audit) {
        var weight = weights.get(line);
        var least = weight.subtract(down(model, weights, line));
        var most = up(model, weights, line).map(weight::add).orElse(null);
        var lightest = with(weights, line, least);
        // of a single ingredient any weight will do, down to none, which is no blend that could be measured
        boolean low = WeighedBatch.sum(lightest).signum() == 0 || audit.isAsGood(lightest, weights);
        boolean high = most == null || audit.isAsGood(with(weights, line, most), weights);
        return new Line(
                share.use(), share.kilograms(), weight, share.step(), low ? least : weight, high ? most : weight);
    }

    private static List<BigFraction> with(List<BigFraction> weights, int line, BigFraction weight) {
        var changed = new ArrayList<>(weights);
        changed.set(line, weight);
        return changed;
    }

    /** How far a weight alone may fall; to nothing at most. */
    private static BigFraction down(WeighingModel model, List<BigFraction> weights, int line) {
        return model.limits().stream()
                .flatMap(limit -> reach(limit, weights, line, -1).stream())
                .reduce(weights.get(line), Fractions::min);
    }

    private static Optional<BigFraction> up(WeighingModel model, List<BigFraction> weights, int line) {
        return model.limits().stream()
                .flatMap(limit -> reach(limit, weights, line, 1).stream())
                .reduce(Fractions::min);
    }

    /** How far a weight may go one way before a limit breaks; empty when it never does. */
    private static Optional<BigFraction> reach(Limit limit, List<BigFraction> weights, int line, int way) {
        var change = limit.row().form().at(line).multiply(way);
        boolean least = limit.row().sense() == Sense.AT_LEAST;
        var lost = least ? change.negate() : change;
        if (lost.signum() <= 0) {
            return Optional.empty();
        }
        var room = limit.room(weights);
        return Optional.of(room.signum() <= 0 ? BigFraction.ZERO : room.divide(lost));
    }
}
