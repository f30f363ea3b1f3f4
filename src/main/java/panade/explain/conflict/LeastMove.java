package panade.explain.conflict;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.explain.conflict.Trials.Search;
import panade.model.LinearForm;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;

/**
 * How far one number must move for everything else to hold: the most (or least) of what it bounds under all other
 * demands. A ratio's number multiplies an amount, which makes that a fractional program; it is solved by Dinkelbach's
 * method (Management Science 13, 1967), which is right with whole numbers too. It begins where the amount is largest,
 * so that it finds a number wherever some number will do.
 */
final class LeastMove {
    /** Each step is at least as good as one of a linear search; a handful is usual. */
    private static final int STEPS = 60;

    private final NumberMove number;
    private final MixedModel others;
    private final Trials trials;
    private final AtomicBoolean open = new AtomicBoolean();

    private LeastMove(NumberMove number, MixedModel others, Trials trials) {
        this.number = number;
        this.others = others;
        this.trials = trials;
    }

    /**
     * A level that is enough.
     *
     * @param level as the model has it; null where no number is enough, or none was found in time
     * @param open whether a question was left open, so that a nearer level, or one at all, may exist
     */
    record Level(@Nullable BigFraction level, boolean open) {}

    /**
     * The nearest level.
     *
     * @param others the model without the number's own row
     */
    static Level find(NumberMove number, MixedModel others, Trials trials) {
        var move = new LeastMove(number, others, trials);
        var level = number.isFixed() ? move.nearer() : move.extreme(others, number.isLeast());
        return new Level(level.orElse(null), move.open.get());
    }

    /** A fixed number may go down or up, as far as the amount can come near it from there. */
    private Optional<BigFraction> nearer() {
        var below = extreme(with(Sense.AT_MOST), true);
        var above = extreme(with(Sense.AT_LEAST), false);
        return Stream.of(below, above)
                .flatMap(Optional::stream)
                .min((a, b) -> distance(a).compareTo(distance(b)));
    }

    private BigFraction distance(BigFraction level) {
        return level.subtract(number.level()).abs();
    }

    private MixedModel with(Sense sense) {
        var row = number.row();
        var relaxed = others.relaxed().with(new Row(row.name(), row.form(), sense, row.right()));
        return new MixedModel(relaxed, others.whole());
    }

    private Optional<BigFraction> extreme(MixedModel model, boolean most) {
        var lever = number.lever();
        return lever.isPresent()
                ? ratio(model, lever.get(), most)
                : point(model, number.row().form(), most)
                        .map(point -> number.row().activity(point));
    }

    private Optional<BigFraction> ratio(MixedModel model, LinearForm lever, boolean most) {
        var level = point(model, lever, true).flatMap(number::levelAt);
        for (int step = 0; step < STEPS; step++) {
            if (level.isEmpty()) {
                return level;
            }
            var now = level.get();
            var next = point(model, gap(lever, now), most);
            if (next.isEmpty()) {
                return level;
            }
            int gain = gap(lever, now).dot(next.get()).signum();
            if (most ? gain <= 0 : gain >= 0) {
                return level;
            }
            level = number.levelAt(next.get());
        }
        open.set(true);
        return level;
    }

    /** How far the row is from holding with a number, by column. */
    private LinearForm gap(LinearForm lever, BigFraction level) {
        return number.row().form().plus(lever.scaled(number.level().subtract(level)));
    }

    /** The point at which a form is most, or least. */
    private Optional<List<BigFraction>> point(MixedModel model, LinearForm form, boolean most) {
        var objective = most ? form.negated() : form;
        var answer = trials.least(new MixedModel(model.relaxed().minimising(objective), model.whole()));
        if (answer instanceof Search.Open || (answer instanceof Search.Found point && !point.least())) {
            open.set(true);
        }
        return answer instanceof Search.Found found ? Optional.of(found.point()) : Optional.empty();
    }
}
