package panade.nudge;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict;
import panade.certify.Verdict.Optimum;
import panade.domain.Use;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.model.Unproved;
import panade.plan.Planner;
import panade.quantity.Decimal;

/**
 * A formula's changes with a switch for each ingredient: nought keeps all its lines as they are made, and only so many
 * may be one. How far a line can go at all makes the rows tight, without which the proof takes a hundred times as long.
 */
final class FewModel {
    /** Rounded outward, for the sake of short numbers. */
    private static final int DIGITS = 6;

    private final Planner planner;
    private final MoveModel moves;
    private final LinearModel limits;
    private final List<Column> columns;
    private final List<Row> rows;
    private final Map<String, Integer> switches = new LinkedHashMap<>();

    /**
     * The model under a ceiling on the cost.
     *
     * @param ceiling money per kilogram of batch that a known blend costs; null when none is known
     */
    FewModel(Planner planner, MoveModel moves, @Nullable BigFraction ceiling) {
        this.planner = planner;
        this.moves = moves;
        var relaxed = moves.model().relaxed();
        this.limits = ceiling == null
                ? relaxed
                : relaxed.with(
                        new Row("known", relaxed.costs(), Sense.AT_MOST, outward(ceiling, RoundingMode.CEILING)));
        this.columns = new ArrayList<>(relaxed.columns());
        this.rows = new ArrayList<>(relaxed.rows());
        ingredients().forEach(this::addSwitch);
    }

    private Set<String> ingredients() {
        var ids = new TreeSet<String>();
        moves.start().brief().uses().forEach(use -> ids.add(use.ingredient()));
        return ids;
    }

    /** The model in which so many ingredients may change at most. */
    MixedModel changingAtMost(int most) {
        var forced = new TreeSet<>(moves.start().homeless());
        forced.removeAll(switches.keySet());
        var all = new ArrayList<>(rows);
        all.add(new Row(
                "changes", LinearForm.sumOf(switches.values()), Sense.AT_MOST, BigFraction.of(most - forced.size())));
        var whole = new TreeSet<>(moves.model().whole());
        whole.addAll(switches.values());
        return new MixedModel(new LinearModel(columns, all), whole);
    }

    private void addSwitch(String id) {
        int column = columns.size();
        columns.add(new Column("changes " + id, BigFraction.ZERO));
        rows.add(MixedModel.limit(column, Sense.AT_MOST, BigInteger.ONE));
        switches.put(id, column);
        if (moves.start().homeless().contains(id)) {
            rows.add(MixedModel.limit(column, Sense.AT_LEAST, BigInteger.ONE));
        }
        moves.start().brief().uses().stream()
                .filter(use -> use.ingredient().equals(id))
                .forEach(use -> addLine(use, column));
    }

    /** A line stays as it is made while its switch is nought, and else within what it can be. */
    private void addLine(Use use, int column) {
        var form = moves.shareOf(use);
        var made = moves.start().shareOf(use);
        var most = extreme(form, true).subtract(made);
        var least = extreme(form, false).subtract(made);
        rows.add(new Row("more", form.plus(column, most.negate()), Sense.AT_MOST, made));
        if (made.signum() > 0) {
            rows.add(new Row("less", form.plus(column, least.negate()), Sense.AT_LEAST, made));
        }
    }

    private BigFraction extreme(LinearForm form, boolean most) {
        var verdict = planner.verdict(limits.minimising(most ? form.negated() : form));
        if (verdict instanceof Verdict.Impossible) {
            throw new Unproved("a blend that was found could not be found again");
        }
        if (!(verdict instanceof Optimum optimum)) {
            throw new Unproved("how much of an ingredient there can be could not be proved");
        }
        return outward(form.dot(optimum.point()), most ? RoundingMode.CEILING : RoundingMode.FLOOR);
    }

    private static BigFraction outward(BigFraction value, RoundingMode mode) {
        return Decimal.of(Decimal.significant(value, DIGITS, mode));
    }
}
