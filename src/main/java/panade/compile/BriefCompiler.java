package panade.compile;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.compile.CompiledBrief.Source;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.model.Cone;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * Turns a brief into a model of shares of the batch. Each bound gives one row a side, so that a row's multiplier is
 * that side's price; a fixed bound gives one equation, and a sure one a cone beside its row. A pure function: the same
 * brief gives the same model in the same order.
 */
public final class BriefCompiler {
    private final Brief brief;
    private final List<Source> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();
    private final List<Cone> cones = new ArrayList<>();
    /** Where the rows of bounds stand that were compiled before over the same columns. */
    private final IdentityHashMap<Bound, List<Integer>> known = new IdentityHashMap<>();

    private BriefCompiler(Brief brief) {
        this.brief = brief;
        var offers = brief.offersByIngredient();
        for (var use : brief.uses()) {
            offers.getOrDefault(use.ingredient(), List.of()).forEach(offer -> columns.add(new Source(use, offer)));
        }
    }

    /** The model of a brief and the way back from it. */
    public static CompiledBrief compile(Brief brief) {
        return compile(brief, BigFraction.ZERO);
    }

    /**
     * The same with money given for each cooked kilogram, where cost is counted per cooked weight: no blend costs less
     * than that per cooked kilogram if none costs less than nothing then (Dinkelbach, Management Science 13, 1967).
     *
     * @param rate money per cooked kilogram; zero for none
     */
    public static CompiledBrief compile(Brief brief, BigFraction rate) {
        return new BriefCompiler(brief).compiled(rate, null);
    }

    /**
     * The model of a brief that differs from a compiled one in some numbers: rows of bounds that are the very same are
     * taken over.
     *
     * @param near of the same ingredients, batch and assumptions
     */
    public static CompiledBrief compile(Brief brief, CompiledBrief near) {
        var compiler = new BriefCompiler(brief);
        if (compiler.columns.equals(near.columns())) {
            compiler.know(near);
        }
        return compiler.compiled(BigFraction.ZERO, near);
    }

    private void know(CompiledBrief near) {
        for (int i = 0; i < near.rows().size(); i++) {
            if (near.rows().get(i) instanceof Limit.OfBound of && of.bound().sure() == null) {
                known.computeIfAbsent(of.bound(), bound -> new ArrayList<>()).add(i);
            }
        }
    }

    private CompiledBrief compiled(BigFraction rate, @Nullable CompiledBrief near) {
        addBatch();
        for (var bound : brief.bounds()) {
            var places = known.getOrDefault(bound, List.of());
            if (near == null || places.isEmpty()) {
                addBound(bound);
            } else {
                places.forEach(i -> add(near.model().rows().get(i), near.rows().get(i)));
            }
        }
        brief.offers().forEach(this::addAvailability);
        return new CompiledBrief(new LinearModel(pricedColumns(rate), rows), columns, limits, cones);
    }

    private List<Column> pricedColumns(BigFraction rate) {
        var shares = columns.stream()
                .map(source -> new Column(
                        columnName(source), brief.costPerKg(source.offer()).subtract(given(source, rate))));
        var clearances = cones.stream()
                .map(cone -> new Column("clear of " + rows.get(cone.row()).name(), BigFraction.ZERO));
        return Stream.concat(shares, clearances).toList();
    }

    private BigFraction given(Source source, BigFraction rate) {
        var cooked = brief.practice().cookedWeight();
        return rate.signum() == 0 || cooked == null
                ? BigFraction.ZERO
                : rate.multiply(cooked.perKg(source.use(), brief.composition()));
    }

    private static String columnName(Source source) {
        return source.use().ingredient() + "@" + source.use().stage() + "<"
                + source.offer().supplier();
    }

    private void addBatch() {
        var all = LinearForm.sumOver(columns.size(), j -> true);
        add(new Row("batch", all, Sense.EQUAL, BigFraction.ONE), new Limit.OfBatch());
    }

    private void addBound(Bound bound) {
        var of = form(bound.of());
        var per = bound.per() == null ? null : form(bound.per());
        if (bound.isFixed(brief.batch())) {
            addSide(bound, Side.FIXED, of, per);
            return;
        }
        addSide(bound, Side.MIN, of, per);
        addSide(bound, Side.MAX, of, per);
    }

    private void addSide(Bound bound, Side side, LinearForm of, @Nullable LinearForm per) {
        var limit = side == Side.MIN ? bound.min() : bound.max();
        if (limit == null) {
            return;
        }
        var sense = side == Side.MIN ? Sense.AT_LEAST : side == Side.MAX ? Sense.AT_MOST : Sense.EQUAL;
        var right = Bound.level(limit, brief.batch());
        boolean ratio = per != null && !Bound.isAmount(limit);
        var form = ratio ? of.minus(Objects.requireNonNull(per).scaled(right)) : of;
        addRow(bound, side, sense, clear(bound, sense, form), ratio ? BigFraction.ZERO : right);
    }

    /** The left side less (or more) what a sure bound keeps away, for which it gets a cone of its own. */
    private LinearForm clear(Bound bound, Sense sense, LinearForm form) {
        var sure = bound.sure();
        if (sure == null) {
            return form;
        }
        int column = columns.size() + cones.size();
        cones.add(new Cone(column, rows.size(), new SpreadForms(brief, columns).of(bound.of(), sure)));
        var sign = sense == Sense.AT_LEAST ? BigFraction.ONE.negate() : BigFraction.ONE;
        return form.plus(column, sign);
    }

    private void addRow(Bound bound, Side side, Sense sense, LinearForm form, BigFraction right) {
        add(new Row(bound.path() + sideName(side), form, sense, right), new Limit.OfBound(bound, side));
    }

    static String sideName(Side side) {
        return side == Side.MIN ? "/min" : side == Side.MAX ? "/max" : "";
    }

    private LinearForm form(Measure measure) {
        return LinearForm.over(columns.size(), j -> measure.perKg(columns.get(j).use(), brief.composition()));
    }

    private void addAvailability(Offer offer) {
        var available = offer.available();
        if (available == null) {
            return;
        }
        var bought = LinearForm.sumOver(
                        columns.size(), j -> columns.get(j).offer().id().equals(offer.id()))
                .scaled(brief.asBought(offer.ingredient(), BigFraction.ONE));
        var right = available.base().divide(brief.batch().base());
        add(new Row(availabilityName(offer), bought, Sense.AT_MOST, right), new Limit.OfOffer(offer));
    }

    /** What a result calls the most that can be had of an offer. */
    public static String availabilityName(Offer offer) {
        return offer.ingredient() + " available " + offer.supplier();
    }

    private void add(Row row, Limit limit) {
        rows.add(row);
        limits.add(limit);
    }
}
