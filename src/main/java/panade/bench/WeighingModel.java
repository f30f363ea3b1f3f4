package panade.bench;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Use;
import panade.domain.purchase.Offer;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.quantity.Quantity;

/**
 * Whole steps of a scale for each line of a batch, near the exact weights, so that every bound is met: shares are of
 * what is really weighed, not of the batch as it was meant.
 */
final class WeighingModel {
    /** What breaking a limit counts against being off by all of a weight. */
    private static final BigFraction GIVING = BigFraction.of(1000);

    private static final int TWENTIETH = 20;

    private final Brief brief;
    private final List<Share> lines;
    private final List<Limit> limits = new ArrayList<>();

    /** Which limits may be broken, as little as can be. */
    enum Giving {
        NONE,
        FIXED,
        ALL
    }

    /**
     * A line: where it goes, its exact weight and the step it is weighed in, both in kilograms.
     *
     * @param moved how far from its exact weight it may be weighed, in kilograms, if not in the next step; null for any
     */
    record Share(
            Use use,
            BigFraction kilograms,
            Quantity step,
            @Nullable BigFraction moved) {}

    /**
     * A limit on the weights, in kilograms.
     *
     * @param row by line number
     * @param fixed whether it is one side of a bound that no other number meets
     */
    record Limit(Row row, boolean fixed) {
        /** How far it is from being broken; negative when it is. */
        BigFraction room(List<BigFraction> weights) {
            var over = row.activity(weights).subtract(row.right());
            return row.sense() == Sense.AT_LEAST ? over : over.negate();
        }
    }

    WeighingModel(Brief brief, List<Share> lines) {
        this.brief = brief;
        this.lines = List.copyOf(lines);
        brief.bounds().forEach(this::addBound);
        brief.candidates().forEach(this::addAvailable);
    }

    List<Limit> limits() {
        return limits;
    }

    private void addBound(Bound bound) {
        boolean fixed = bound.isFixed(brief.batch());
        add(bound, bound.min(), Sense.AT_LEAST, fixed);
        add(bound, bound.max(), Sense.AT_MOST, fixed);
    }

    private void add(Bound bound, @Nullable Quantity limit, Sense sense, boolean fixed) {
        if (limit == null) {
            return;
        }
        boolean amount = Bound.isAmount(limit);
        var form = form(bound.of());
        if (!amount) {
            var per = bound.per() == null ? ones() : form(bound.per());
            form = form.minus(per.scaled(limit.base()));
        }
        var right = amount ? limit.base() : BigFraction.ZERO;
        limits.add(new Limit(new Row(bound.path(), form, sense, right), fixed));
    }

    private BigFraction largestStep(LinearForm form) {
        return form.scaledBy(this::step).largest();
    }

    private BigFraction step(int line) {
        return lines.get(line).step().base();
    }

    private LinearForm form(Measure measure) {
        return LinearForm.over(lines.size(), l -> measure.perKg(lines.get(l).use(), brief.composition()));
    }

    private LinearForm ones() {
        return LinearForm.sumOver(lines.size(), l -> true);
    }

    private void addAvailable(String id) {
        var most = brief.offersFor(id).stream()
                .map(Offer::available)
                .map(available -> Optional.ofNullable(available).map(Quantity::base))
                .reduce((a, b) -> a.flatMap(one -> b.map(one::add)))
                .flatMap(sum -> sum);
        var form = LinearForm.sumOver(
                        lines.size(), l -> lines.get(l).use().ingredient().equals(id))
                .scaled(brief.asBought(id, BigFraction.ONE));
        most.ifPresent(sum -> limits.add(new Limit(new Row(id + " available", form, Sense.AT_MOST, sum), false)));
    }

    /**
     * The model in whole steps: columns are steps by line, then how far each line is off as a part of its weight, then,
     * where limits may give, by how much.
     *
     * @param margin how far inside each limit to stay, as a part of what one step can change
     * @param giving which limits may be broken instead, as little as can be
     */
    MixedModel model(BigFraction margin, Giving giving) {
        var columns = new ArrayList<Column>();
        var rows = new ArrayList<Row>();
        var whole = new HashSet<Integer>();
        for (int l = 0; l < lines.size(); l++) {
            columns.add(new Column("steps " + l, BigFraction.ZERO));
            whole.add(l);
        }
        for (int l = 0; l < lines.size(); l++) {
            columns.add(new Column("off " + l, BigFraction.ONE));
            addOff(l, rows);
            addMost(l, rows);
        }
        for (var limit : limits) {
            boolean gives = giving == Giving.ALL || (giving == Giving.FIXED && limit.fixed());
            rows.add(gives ? giving(limit.row(), columns) : inside(limit.row(), margin));
        }
        // a smaller batch breaks a bound by fewer grams, which would not be nearer
        addTotal(rows, giving == Giving.NONE ? slack() : largestStep(ones()).divide(2));
        return new MixedModel(new LinearModel(columns, rows), whole);
    }

    private void addOff(int line, List<Row> rows) {
        var exact = lines.get(line).kilograms();
        var step = step(line);
        var size = Fractions.max(exact, step);
        var part = step.divide(size);
        int off = lines.size() + line;
        rows.add(new Row("over", Map.of(line, part, off, BigFraction.ONE.negate()), Sense.AT_MOST, exact.divide(size)));
        rows.add(new Row("under", Map.of(line, part, off, BigFraction.ONE), Sense.AT_LEAST, exact.divide(size)));
    }

    /** The step below and the step above are near enough for any line. */
    private void addMost(int line, List<Row> rows) {
        var most = lines.get(line).moved();
        if (most == null) {
            return;
        }
        var exact = lines.get(line).kilograms();
        var down = Fractions.min(
                whole(exact.subtract(most), line, RoundingMode.CEILING), whole(exact, line, RoundingMode.FLOOR));
        var up = Fractions.max(
                whole(exact.add(most), line, RoundingMode.FLOOR), whole(exact, line, RoundingMode.CEILING));
        rows.add(new Row("least moved", LinearForm.of(line, BigFraction.ONE), Sense.AT_LEAST, down));
        rows.add(new Row("most moved", LinearForm.of(line, BigFraction.ONE), Sense.AT_MOST, up));
    }

    private BigFraction whole(BigFraction kilograms, int line, RoundingMode mode) {
        return Decimal.of(kilograms.divide(step(line)).bigDecimalValue(0, mode));
    }

    private Row inside(Row row, BigFraction margin) {
        var inside = largestStep(row.form()).multiply(margin);
        boolean least = row.sense() == Sense.AT_LEAST;
        var right = least ? row.right().add(inside) : row.right().subtract(inside);
        return new Row(row.name(), row.form().scaledBy(this::step), row.sense(), right);
    }

    private Row giving(Row row, List<Column> columns) {
        var given = row.sense() == Sense.AT_LEAST ? BigFraction.ONE : BigFraction.ONE.negate();
        var terms = row.form().scaledBy(this::step).plus(columns.size(), given);
        columns.add(new Column("gives", GIVING.divide(scale(row))));
        return new Row(row.name(), terms, row.sense(), row.right());
    }

    /** What a limit is measured against: all that counts towards it at the exact weights. */
    private BigFraction scale(Row row) {
        var scale = row.form().coefficients().entrySet().stream()
                .map(term ->
                        term.getValue().abs().multiply(lines.get(term.getKey()).kilograms()))
                .reduce(BigFraction.ZERO, BigFraction::add);
        return scale.signum() == 0 ? BigFraction.ONE : scale;
    }

    /** A step of the coarsest scale, but no more than a twentieth of the batch where half a step is less than that. */
    private BigFraction slack() {
        var step = largestStep(ones());
        var part = brief.batch().base().divide(TWENTIETH);
        var most = Fractions.min(part, step);
        var half = step.divide(2);
        return half.compareTo(most) < 0 ? most : half;
    }

    /** The weights together make the batch, to a step of the coarsest scale at most, and something in any case. */
    private void addTotal(List<Row> rows, BigFraction slack) {
        var steps = ones().scaledBy(this::step);
        var batch = brief.batch().base();
        var least = batch.subtract(slack);
        var something = lines.stream().map(line -> line.step().base()).reduce(slack, Fractions::min);
        rows.add(new Row("total", steps, Sense.AT_LEAST, Fractions.max(least, something)));
        rows.add(new Row("total", steps, Sense.AT_MOST, batch.add(slack)));
    }
}
