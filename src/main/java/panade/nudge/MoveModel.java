package panade.nudge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Decision;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.RuleCompiler;
import panade.domain.Blend;
import panade.domain.Use;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.plan.Planner;

/**
 * A brief's model with what each line gains over the formula. Shares of both sum to one, so what lines gain together is
 * what others lose: half the sum of the absolute changes.
 *
 * @param start the formula
 * @param compiled the brief; its columns come first
 * @param model with a column for the gain of each line of the formula, and the switches of the brief's rules
 * @param moved the weight moved, as a share of the batch; at a point whose gains are no larger than they must be
 */
record MoveModel(Start start, CompiledBrief compiled, MixedModel model, LinearForm moved) {

    /** The model of a formula's changes. */
    static MoveModel of(Planner planner, Start start) {
        var brief = start.brief();
        var compiled = BriefCompiler.compile(brief);
        var base = brief.practice().rules().isEmpty()
                ? new MixedModel(compiled.model(), Set.of())
                : RuleCompiler.compile(brief, compiled, planner.extent(compiled))
                        .model();
        var columns = new ArrayList<>(base.relaxed().columns());
        var rows = new ArrayList<>(base.relaxed().rows());
        var moved = LinearForm.ZERO;
        for (var use : brief.uses()) {
            var form = shareOf(compiled, use);
            var share = start.shareOf(use);
            if (share.signum() == 0) {
                moved = moved.plus(form);
                continue;
            }
            int gain = columns.size();
            columns.add(new Column("gain of " + use.ingredient() + "@" + use.stage(), BigFraction.ZERO));
            rows.add(new Row("gain", form.plus(gain, BigFraction.ONE.negate()), Sense.AT_MOST, share));
            moved = moved.plus(gain, BigFraction.ONE);
        }
        return new MoveModel(start, compiled, new MixedModel(new LinearModel(columns, rows), base.whole()), moved);
    }

    /** The share of a line of the brief. */
    LinearForm shareOf(Use use) {
        return shareOf(compiled, use);
    }

    private static LinearForm shareOf(CompiledBrief compiled, Use use) {
        return LinearForm.sumOf(IntStream.range(0, compiled.columns().size())
                .filter(j -> compiled.columns().get(j).use().equals(use))
                .boxed()
                .toList());
    }

    /** The place of the row that says how much may move. */
    int ceiling() {
        return model.relaxed().rows().size();
    }

    /** The model in which so much may move at most. */
    MixedModel movingAtMost(BigFraction most) {
        return with(new Row("moved", moved, Sense.AT_MOST, most));
    }

    /** The same with one row more. */
    MixedModel with(Row row) {
        return new MixedModel(model.relaxed().with(row), model.whole());
    }

    /** The least that must move under a model of these columns. */
    Decision<LeastPoint> leastMoved(Planner planner, MixedModel under) {
        return LeastPoint.of(planner, new MixedModel(under.relaxed().minimising(padded(under)), under.whole()));
    }

    private LinearForm padded(MixedModel under) {
        return LinearForm.over(under.relaxed().columns().size(), moved::at);
    }

    /** The blend at a point, measured again without the model. */
    Blend blend(List<BigFraction> point) {
        var shares = point.subList(0, compiled.columns().size());
        return Planner.measured(start.brief(), Planner.blendAt(start.brief(), compiled, shares))
                .orElseThrow();
    }
}
