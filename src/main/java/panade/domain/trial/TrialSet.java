package panade.domain.trial;

import java.util.List;
import panade.domain.Brief;
import panade.domain.origin.Remark;

/**
 * Trials of one product.
 *
 * @param file the document they were read from
 * @param brief of the product
 * @param remarks what the document says that may not be meant
 */
public record TrialSet(
        String title, String file, Brief brief, List<Response> responses, List<Trial> trials, List<Remark> remarks) {
    public TrialSet {
        responses = List.copyOf(responses);
        trials = List.copyOf(trials);
        remarks = List.copyOf(remarks);
    }
}
