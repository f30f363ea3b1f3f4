package panade.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.quotes.PriceComparison;
import panade.result.BatchResult;
import panade.result.BriefResult;
import panade.result.PanelResult;
import panade.result.TraceResult;

/**
 * All that a page tells of one product.
 *
 * @param brief what was asked
 * @param outcome what came of it
 * @param sheet what to weigh; null when there is no blend
 * @param curves how the least cost follows some numbers; none where there is no blend
 * @param comparison the product under several price lists; null when there is one
 * @param panel a draft of the label; null when there is no blend
 */
public record ReportInput(
        Brief brief,
        BriefResult outcome,
        @Nullable BatchResult sheet,
        List<TraceResult> curves,
        @Nullable PriceComparison comparison,
        @Nullable PanelResult panel) {
    public ReportInput {
        curves = List.copyOf(curves);
    }
}
