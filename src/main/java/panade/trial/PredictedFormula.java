package panade.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;
import panade.domain.trial.Weighed;
import panade.learn.Prediction;

/**
 * What trials predict of a formula.
 *
 * @param outside levers that lie beyond what was tried
 */
public record PredictedFormula(String formula, FittedResponse response, Prediction at, List<LeverEffect> outside) {
    public PredictedFormula {
        outside = List.copyOf(outside);
    }

    /** What one fitted response says; empty without a fit, or where the formula does not state a lever. */
    public static Optional<PredictedFormula> of(
            String formula, Weighed weighed, Composition composition, FittedResponse response) {
        var values = new ArrayList<BigFraction>();
        var outside = new ArrayList<LeverEffect>();
        for (int i = 0; i < response.effects().size(); i++) {
            var effect = response.effects().get(i);
            // a formula does not say how it is made: settings stand at the middle of the trials
            var value = effect.lever()
                    .value(weighed, Map.of(), composition)
                    .orElse(response.middle().get(i));
            values.add(value);
            if (!effect.isTried(value)) {
                outside.add(effect);
            }
        }
        return response.fit().map(fit -> new PredictedFormula(formula, response, fit.at(values), outside));
    }
}
