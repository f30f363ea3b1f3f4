package panade.compile;

import java.util.List;
import panade.domain.Bound;
import panade.domain.Side;
import panade.domain.Use;
import panade.domain.purchase.Offer;
import panade.model.LinearModel;

/**
 * A brief as a model, with the way back: every row and every column knows which line of which document it came from.
 *
 * @param model columns are shares of the batch; the objective is money per kilogram of batch
 * @param columns what each column is, in the model's order
 * @param rows what each row is, in the model's order
 */
public record CompiledBrief(LinearModel model, List<Source> columns, List<Limit> rows) {
    public CompiledBrief {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        if (columns.size() != model.columns().size()
                || rows.size() != model.rows().size()) {
            throw new IllegalArgumentException("every row and column needs its origin");
        }
    }

    /** A column: goods of one offer weighed in at one place. */
    public record Source(Use use, Offer offer) {}

    /** What a row stands for. */
    public sealed interface Limit {
        /** One side of a bound. */
        record OfBound(Bound bound, Side side) implements Limit {}

        /** The most that can be had of an offer. */
        record OfOffer(Offer offer) implements Limit {}

        /** All shares together make the batch. */
        record OfBatch() implements Limit {}
    }
}
