package panade.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.BoundId;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Use;
import panade.domain.pantry.Composition;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.model.Cone;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;

/**
 * A brief as a model, with the way back: every row and every column knows which line of which document it came from.
 *
 * @param model columns are shares of the batch, and after them how far each sure bound keeps away from its number; the
 *     objective is money per kilogram of batch
 * @param columns what each share is of, in the model's order
 * @param rows what each row is, in the model's order
 * @param cones how far sure bounds must keep away, one for each of the model's last columns
 */
public record CompiledBrief(LinearModel model, List<Source> columns, List<Limit> rows, List<Cone> cones) {
    public CompiledBrief {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        cones = List.copyOf(cones);
        if (columns.size() + cones.size() != model.columns().size()
                || rows.size() != model.rows().size()) {
            throw new IllegalArgumentException("every row and column needs its origin");
        }
    }

    /** The same with rows more that its cones imply. */
    public CompiledBrief withCuts(List<Row> cuts) {
        var all = new ArrayList<>(model.rows());
        all.addAll(cuts);
        var limits = new ArrayList<>(rows);
        cuts.forEach(cut -> limits.add(new Limit.OfCone(cut.name())));
        return withRows(all, limits);
    }

    /** The same columns with other rows. */
    public CompiledBrief withRows(List<Row> some, List<Limit> limits) {
        return new CompiledBrief(new LinearModel(model.columns(), some), columns, limits, cones);
    }

    /** Whether no cut was moved inwards, so that a least cost of the model is one of the brief. */
    public boolean touchesItsCones() {
        return IntStream.range(0, rows.size())
                .filter(i -> rows.get(i) instanceof Limit.OfCone)
                .allMatch(i -> model.rows().get(i).right().signum() == 0);
    }

    /** The columns of an ingredient, whatever the offer and the stage. */
    public Set<Integer> columnsOf(String ingredient) {
        return columnsOf(source -> source.use().ingredient().equals(ingredient));
    }

    /** The columns of an offer, whatever the stage. */
    public Set<Integer> columnsOf(OfferId offer) {
        return columnsOf(source -> source.offer().id().equals(offer));
    }

    private Set<Integer> columnsOf(Predicate<Source> isOf) {
        return IntStream.range(0, columns.size())
                .filter(j -> isOf.test(columns.get(j)))
                .boxed()
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The place of a row; -1 where there is none. */
    public int rowOf(RowId id) {
        return IntStream.range(0, rows.size())
                .filter(i -> rows.get(i).id().equals(id))
                .findFirst()
                .orElse(-1);
    }

    /** The rows of a bound, one for each of its limits. */
    public Set<Integer> rowsOf(BoundId id) {
        return IntStream.range(0, rows.size())
                .filter(i -> rows.get(i) instanceof Limit.OfBound of
                        && of.bound().id().equals(id))
                .boxed()
                .collect(Collectors.toSet());
    }

    /** The point at which a blend is made: the share of each column, and nothing for what sure bounds keep away. */
    public List<BigFraction> pointOf(Blend blend) {
        var shares = blend.lines().stream()
                .collect(Collectors.toMap(
                        line -> new ColumnId(line.use(), line.offer().id()), Blend.Line::share, BigFraction::add));
        return Stream.concat(
                        columns.stream().map(source -> shares.getOrDefault(source.id(), BigFraction.ZERO)),
                        cones.stream().map(cone -> BigFraction.ZERO))
                .toList();
    }

    /** The share of an ingredient in the batch. */
    public LinearForm shareOf(String ingredient) {
        return LinearForm.sumOf(columnsOf(ingredient));
    }

    /** Kilograms bought of an offer for each kilogram of batch: what a unit of its price adds to the cost. */
    public LinearForm boughtOf(Offer offer, Brief brief) {
        return LinearForm.sumOf(columnsOf(offer.id())).scaled(brief.asBought(offer.ingredient(), BigFraction.ONE));
    }

    /** A measure of the batch. */
    public LinearForm formOf(Measure measure, Composition composition) {
        return LinearForm.over(columns.size(), j -> measure.perKg(columns.get(j).use(), composition));
    }

    /** A column: goods of one offer weighed in at one place. */
    public record Source(Use use, Offer offer) {
        /** Which column it is, whatever the price. */
        public ColumnId id() {
            return new ColumnId(use, offer.id());
        }
    }
}
