package panade.nudge;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.bench.Scales;
import panade.certify.Verdict.Optimum;
import panade.domain.Blend;
import panade.domain.Stage;
import panade.domain.Use;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.plan.Planner;
import panade.solver.MixedAnswer;

/** Puts the changes of a formula into whole steps of the scale; all other lines stay as they are made. */
record Weighable(Planner planner, MoveModel moves) {
    private static final Duration TIME = Duration.ofSeconds(3);

    /**
     * The cheapest blend found in which each change is whole steps, measured again; empty where none keeps every bound.
     *
     * @param exact a blend at any weights
     * @param held the model of the blend with all switches held
     * @param changed what may weigh something else than is made
     */
    Optional<Blend> in(Blend exact, LinearModel held, Set<String> changed) {
        if (isInSteps(exact)) {
            return Optional.of(exact);
        }
        var columns = new ArrayList<>(held.columns());
        var rows = new ArrayList<>(held.rows());
        var steps = new TreeSet<Integer>();
        for (var use : start().brief().uses()) {
            var form = moves.shareOf(use);
            var made = start().shareOf(use);
            if (!changed.contains(use.ingredient())) {
                rows.add(new Row("as made", form, Sense.EQUAL, made));
                continue;
            }
            int column = columns.size();
            columns.add(new Column("steps of " + use.ingredient() + "@" + use.stage(), BigFraction.ZERO));
            var step = step(use);
            rows.add(new Row("steps", form.plus(column, step.negate()), Sense.EQUAL, rest(made, step)));
            steps.add(column);
        }
        return found(new MixedModel(new LinearModel(columns, rows), steps));
    }

    private Optional<Blend> found(MixedModel model) {
        return planner.search(model, TIME) instanceof MixedAnswer.Found found
                        && planner.verdict(model.holding(found.values())) instanceof Optimum optimum
                ? Optional.of(moves.blend(optimum.point())).filter(this::isInSteps)
                : Optional.empty();
    }

    /** Whether every change of a blend is whole steps of the scale that the line is weighed on. */
    private boolean isInSteps(Blend blend) {
        return start().shares().keySet().stream().allMatch(use -> isInSteps(blend, use))
                && blend.lines().stream().map(Blend.Line::use).allMatch(use -> isInSteps(blend, use));
    }

    private boolean isInSteps(Blend blend, Use use) {
        return rest(start().changeTo(blend, use).abs(), step(use)).signum() == 0;
    }

    /** A step of the scale as a share of the batch. */
    private BigFraction step(Use use) {
        var brief = start().brief();
        var stage = brief.stages().stream()
                .filter(each -> each.id().equals(use.stage()))
                .findFirst();
        var scales = Scales.stated(brief);
        return stage.map(each -> stepFor(scales, each))
                .orElseGet(() -> scales.step().base())
                .divide(brief.batch().base());
    }

    private static BigFraction stepFor(Scales scales, Stage stage) {
        return scales.stepFor(stage, BigFraction.ZERO).base();
    }

    /** What is left of a share after as many whole steps as go into it. */
    private static BigFraction rest(BigFraction share, BigFraction step) {
        var steps = share.divide(step);
        var top = steps.getNumerator().abs();
        var whole = top.divide(steps.getDenominator().abs());
        return share.subtract(step.multiply(BigFraction.of(whole)));
    }

    private Start start() {
        return moves.start();
    }
}
