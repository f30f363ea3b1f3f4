package panade.result.trial;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.RemarkLine;

/**
 * What trials teach.
 *
 * @param sure how sure bounds and margins are, as a share
 * @param responses in the order of the document
 * @param at what is predicted of formulas
 * @param remarks on the documents
 * @param title of the trials
 */
public record FitResult(
        BigFraction sure,
        List<FittedResult> responses,
        List<PredictionResult> at,
        List<RemarkLine> remarks,
        @JsonIgnore String title) {
    public FitResult {
        responses = List.copyOf(responses);
        at = List.copyOf(at);
        remarks = List.copyOf(remarks);
    }

    /**
     * What is predicted of a formula.
     *
     * @param formula the document's path
     * @param mean over many batches
     * @param standardError of the mean; null when the trials leave nothing over to judge it by
     * @param lower end of the range in which the next batch lies, with the probability of {@code sure}; null as above
     * @param upper end of that range
     * @param outside names of the levers that lie beyond what was tried
     * @param unit of the response
     */
    public record PredictionResult(
            String formula,
            String response,
            BigFraction mean,
            @Nullable BigDecimal standardError,
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper,
            List<String> outside,
            @JsonIgnore String unit) {
        public PredictionResult {
            outside = List.copyOf(outside);
        }
    }
}
