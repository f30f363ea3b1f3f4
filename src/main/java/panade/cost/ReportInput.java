package panade.cost;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.bench.BatchSheet;
import panade.label.Panel;
import panade.plan.Outcome;
import panade.quotes.PriceComparison;
import panade.trace.Curve;

/**
 * All that is told of one product at once.
 *
 * @param outcome what came of the brief
 * @param sheet what to weigh; null when there is no blend
 * @param curves how the least cost follows some numbers; none where there is no blend
 * @param comparison the product under several price lists; null when there is one
 * @param panel a draft of the label; null when there is no blend
 * @param asides what else was asked
 */
public record ReportInput(
        Outcome outcome,
        @Nullable BatchSheet sheet,
        List<Curve> curves,
        @Nullable PriceComparison comparison,
        @Nullable Panel panel,
        OptionalSections asides) {
    public ReportInput {
        curves = List.copyOf(curves);
    }
}
