package panade.design;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.learn.Fit;
import panade.learn.Prediction;

/**
 * What more trials are worth to a bound that trials stand behind: the better known the response of the cheapest blend,
 * the less of it must be kept in hand. Worked out before they are made, for trials that come out as predicted; the
 * blend stays where it is, and so does Student's quantile.
 *
 * @param fit what the trials so far teach
 * @param optimum the levers of the blend that is cheapest now
 * @param sure how sure the bound is to be, a half or more
 * @param of what the bound is about
 */
public record TrialWorth(Fit fit, List<BigFraction> optimum, BigFraction sure, Prediction.Of of) {
    public TrialWorth {
        optimum = List.copyOf(optimum);
    }

    /**
     * How much less of the response must be kept in hand, in its own unit; empty where the trials leave nothing to
     * judge the error by.
     *
     * @param tried the levers of each trial that is added
     */
    public Optional<BigDecimal> margin(List<List<BigFraction>> tried) {
        return fit.at(optimum)
                .below(sure, of)
                .flatMap(now -> fit.after(tried, optimum).below(sure, of).map(now::subtract));
    }

    /**
     * The same in money.
     *
     * @param shadowPrice what a unit of the response costs, as the bound has it
     */
    public Optional<BigDecimal> saving(List<List<BigFraction>> tried, BigDecimal shadowPrice) {
        return margin(tried).map(shadowPrice::multiply);
    }
}
