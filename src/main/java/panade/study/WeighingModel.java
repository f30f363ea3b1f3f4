package panade.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Offer;
import panade.domain.Use;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.quantity.Quantity;

/**
 * Whole steps of a scale for each line of a batch, near the exact weights, so that every bound is met: shares are of
 * what is really weighed, not of the batch as it was meant.
 */
final class WeighingModel {
    /** What breaking a limit counts against being off by all of a weight. */
    private static final BigFraction GIVING = BigFraction.of(1000);

    private final Brief brief;
    private final List<Share> lines;
    private final List<Limit> limits = new ArrayList<>();

    /** A line: where it goes, its exact weight and the step it is weighed in, both in kilograms. */
    record Share(Use use, BigFraction kilograms, Quantity step) {}

    /**
     * A limit on the weights, in kilograms.
     *
     * @param row by line number
     * @param path of the bound; empty for what can be had
     */
    record Limit(Row row, String path) {
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
        var min = bound.min();
        var max = bound.max();
        boolean fixed = bound.isFixed(brief.batch());
        add(bound, min, Sense.AT_LEAST, fixed);
        add(bound, max, Sense.AT_MOST, fixed);
    }

    private void add(Bound bound, @Nullable Quantity limit, Sense sense, boolean fixed) {
        if (limit == null) {
            return;
        }
        boolean amount = Bound.isAmount(limit);
        var form = form(bound.of());
        if (!amount) {
            var per = bound.per() == null ? ones() : form(Objects.requireNonNull(bound.per()));
            per.forEach((l, value) -> form.merge(l, value.multiply(limit.base()).negate(), BigFraction::add));
        }
        var right = amount ? limit.base() : BigFraction.ZERO;
        // nothing fixed can be hit in whole steps; one step of what counts most is near enough
        var band = fixed ? largestStep(form) : BigFraction.ZERO;
        right = sense == Sense.AT_LEAST ? right.subtract(band) : right.add(band);
        form.values().removeIf(value -> value.signum() == 0);
        limits.add(new Limit(new Row(bound.path(), form, sense, right), bound.path()));
    }

    private BigFraction largestStep(Map<Integer, BigFraction> form) {
        return form.entrySet().stream()
                .map(term -> term.getValue().abs().multiply(step(term.getKey())))
                .reduce(BigFraction.ZERO, (a, b) -> a.subtract(b).signum() < 0 ? b : a);
    }

    private BigFraction step(int line) {
        return lines.get(line).step().base();
    }

    private Map<Integer, BigFraction> form(Measure measure) {
        var form = new HashMap<Integer, BigFraction>();
        for (int l = 0; l < lines.size(); l++) {
            form.put(l, measure.perKg(lines.get(l).use(), brief.composition()));
        }
        return form;
    }

    private Map<Integer, BigFraction> ones() {
        var ones = new HashMap<Integer, BigFraction>();
        for (int l = 0; l < lines.size(); l++) {
            ones.put(l, BigFraction.ONE);
        }
        return ones;
    }

    private void addAvailable(String id) {
        var most = brief.offersFor(id).stream()
                .map(Offer::available)
                .map(available -> Optional.ofNullable(available).map(Quantity::base))
                .reduce((a, b) -> a.flatMap(one -> b.map(one::add)))
                .flatMap(sum -> sum);
        var form = new HashMap<Integer, BigFraction>();
        for (int l = 0; l < lines.size(); l++) {
            if (lines.get(l).use().ingredient().equals(id)) {
                form.put(l, brief.set().ingredient(id).usable().reciprocal());
            }
        }
        most.ifPresent(sum -> limits.add(new Limit(new Row(id + " available", form, Sense.AT_MOST, sum), "")));
    }

    /**
     * The model in whole steps: columns are steps by line, then how far each line is off as a part of its weight, then,
     * where limits may give, by how much.
     *
     * @param margin how far inside each limit to stay, as a part of what one step can change
     * @param giving whether limits may be broken, as little as can be
     */
    MixedModel model(BigFraction margin, boolean giving) {
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
        }
        limits.forEach(limit -> rows.add(inSteps(limit.row(), margin, giving ? columns : null)));
        addTotal(rows);
        return new MixedModel(new LinearModel(columns, rows), whole);
    }

    private void addOff(int line, List<Row> rows) {
        var exact = lines.get(line).kilograms();
        var step = step(line);
        var size = exact.subtract(step).signum() < 0 ? step : exact;
        var part = step.divide(size);
        int off = lines.size() + line;
        rows.add(new Row("over", Map.of(line, part, off, BigFraction.ONE.negate()), Sense.AT_MOST, exact.divide(size)));
        rows.add(new Row("under", Map.of(line, part, off, BigFraction.ONE), Sense.AT_LEAST, exact.divide(size)));
    }

    private Row inSteps(Row row, BigFraction margin, @Nullable List<Column> givingColumns) {
        var terms = new HashMap<Integer, BigFraction>();
        row.coefficients().forEach((l, value) -> terms.put(l, value.multiply(step(l))));
        var inside = largestStep(row.coefficients()).multiply(margin);
        boolean least = row.sense() == Sense.AT_LEAST;
        if (givingColumns != null) {
            terms.put(givingColumns.size(), least ? BigFraction.ONE : BigFraction.ONE.negate());
            givingColumns.add(new Column("gives", GIVING.divide(scale(row))));
        }
        var right = least ? row.right().add(inside) : row.right().subtract(inside);
        return new Row(row.name(), terms, row.sense(), right);
    }

    /** What a limit is measured against: all that counts towards it at the exact weights. */
    private BigFraction scale(Row row) {
        var scale = row.coefficients().entrySet().stream()
                .map(term ->
                        term.getValue().abs().multiply(lines.get(term.getKey()).kilograms()))
                .reduce(BigFraction.ZERO, BigFraction::add);
        return scale.signum() == 0 ? BigFraction.ONE : scale;
    }

    /** The weights together make the batch, to a step of the coarsest scale. */
    private void addTotal(List<Row> rows) {
        var steps = new HashMap<Integer, BigFraction>();
        for (int l = 0; l < lines.size(); l++) {
            steps.put(l, step(l));
        }
        var slack = largestStep(ones());
        var batch = brief.batch().base();
        rows.add(new Row("total", steps, Sense.AT_LEAST, batch.subtract(slack)));
        rows.add(new Row("total", steps, Sense.AT_MOST, batch.add(slack)));
    }
}
