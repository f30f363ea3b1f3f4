package panade.experiment;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.bench.Scales;
import panade.quantity.Quantity;
import panade.trial.FittedResponse;

/**
 * What is asked of the next mixings.
 *
 * @param trials how many there may be
 * @param batch weight of one
 * @param responses what the trials so far taught
 * @param needs what a blend must come to
 * @param worthwhile money per kilogram below which a mixing is not worth making
 * @param seed of codes, order and search
 */
public record Request(
        int trials,
        Quantity batch,
        Scales scales,
        List<FittedResponse> responses,
        List<Need> needs,
        BigFraction worthwhile,
        long seed) {
    public Request {
        responses = List.copyOf(responses);
        needs = List.copyOf(needs);
    }
}
