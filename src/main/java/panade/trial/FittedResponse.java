package panade.trial;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.trial.Response;
import panade.learn.Coverage;
import panade.learn.Estimate;
import panade.learn.Fit;
import panade.learn.Form;
import panade.learn.LackOfFit;
import panade.learn.LackOfFit.PureError;
import panade.learn.Prediction;
import panade.learn.TasterMeans;
import panade.learn.Term;
import panade.learn.Variation;

/**
 * What trials teach of one response.
 *
 * @param trials how many measured it
 * @param chosen whether the checks chose the form
 * @param sure how sure bounds are to be
 * @param effects of its levers, in their order
 * @param middle the mean of the trials in each lever
 * @param tasters how they scored; empty where nobody tasted
 * @param remarks what the trials do not tell, and what to repeat; whole sentences
 */
public record FittedResponse(
        Response response,
        int trials,
        Form form,
        boolean chosen,
        boolean constant,
        List<Term> terms,
        Estimate estimate,
        PureError pureError,
        BigFraction sure,
        List<LeverEffect> effects,
        List<BigFraction> middle,
        Optional<TasterMeans> tasters,
        List<String> remarks) {
    public FittedResponse {
        terms = List.copyOf(terms);
        effects = List.copyOf(effects);
        middle = List.copyOf(middle);
        remarks = List.copyOf(remarks);
    }

    /** The fit; empty where the trials cannot tell its terms apart. */
    public Optional<Fit> fit() {
        return estimate instanceof Fit fit ? Optional.of(fit) : Optional.empty();
    }

    /** The test of the form against repeats; empty where there is nothing to test it with. */
    public Optional<LackOfFit> lackOfFit() {
        return fit().flatMap(fit -> LackOfFit.of(fit, pureError));
    }

    /** How often bounds held that the other trials would have set. */
    public Optional<Coverage> coverage() {
        return fit().flatMap(fit -> Coverage.of(fit, sure));
    }

    /** How much of the variation the fit takes up. */
    public Optional<Variation> variation() {
        return fit().map(Variation::of);
    }

    /** What is predicted in the middle of the trials. */
    public Optional<Prediction> atMiddle() {
        return fit().map(fit -> fit.at(middle));
    }
}
