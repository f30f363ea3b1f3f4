package panade.result.trial;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What trials teach of one response.
 *
 * @param unit as the document writes it; empty for scores
 * @param form linear, quadratic or special cubic
 * @param chosen whether the checks chose the form
 * @param constant whether the form has a level that no lever explains
 * @param trials how many measured it
 * @param terms none where the trials cannot tell them apart
 * @param residual what the fit leaves over; null without a fit
 * @param pureError what repeats of one mixing differ by
 * @param lackOfFit the form's test against repeats; null when there is nothing to test it with
 * @param press sum of squares of what each trial is off when the others predict it; null when one stands alone
 * @param r2 share of the variation that the fit takes up; null when there is none
 * @param predictedR2 the same when each trial is predicted from the others
 * @param r2About mean, or zero for a form that cannot say that nothing matters
 * @param leverage null without a fit
 * @param coverage how often bounds held that the other trials would have set; null as {@code press}
 * @param levers what each does
 * @param middle what is predicted in the middle of the trials; null without a fit
 * @param tasters by how much each scores above the average taster
 * @param remarks what the trials do not tell, and what to repeat
 */
public record FittedResult(
        String name,
        String unit,
        String form,
        boolean chosen,
        boolean constant,
        int trials,
        List<TermResult> terms,
        @Nullable Residual residual,
        PureError pureError,
        @Nullable LackOfFit lackOfFit,
        @Nullable BigFraction press,
        @Nullable BigFraction r2,
        @Nullable BigFraction predictedR2,
        @Nullable String r2About,
        @Nullable Leverage leverage,
        @Nullable Coverage coverage,
        List<LeverResult> levers,
        @Nullable Middle middle,
        List<Taster> tasters,
        List<String> remarks) {
    public FittedResult {
        terms = List.copyOf(terms);
        levers = List.copyOf(levers);
        tasters = List.copyOf(tasters);
        remarks = List.copyOf(remarks);
    }

    /**
     * A term of the form.
     *
     * @param of its levers; none for the constant
     * @param coefficient for levers in shares of the whole, or in their own unit where they are none
     * @param standardError null when nothing is left over to judge it by
     */
    public record TermResult(
            List<String> of,
            BigFraction coefficient,
            @Nullable BigDecimal standardError) {
        public TermResult {
            of = List.copyOf(of);
        }
    }

    /** Degrees of freedom, standard deviation of one batch, and sum of squares. */
    public record Residual(int df, @Nullable BigDecimal sd, BigFraction sse) {}

    /** Degrees of freedom and sum of squares. */
    public record PureError(int df, BigFraction ss) {}

    /**
     * A test.
     *
     * @param f ratio of variances
     * @param p how often chance alone gives such a ratio
     */
    public record LackOfFit(int df, BigFraction ss, BigFraction f, BigDecimal p) {}

    /** The largest leverage of a trial, from 0 to 1. */
    public record Leverage(BigFraction most) {}

    /** How sure the bound was meant, how often it held, and of how many trials. */
    public record Coverage(BigFraction sure, int held, int of) {}

    /**
     * What a lever does in the middle of the trials.
     *
     * @param unit of what follows; empty for numbers without one
     * @param from the least that was tried
     * @param to the most
     * @param step a handy difference of it; null where nothing is known of what it does
     * @param change of the response for a step more
     * @param giveOrTake to both sides of the change, with the probability of {@code sure}; null when not known
     * @param replacing whether the other levers make room for it
     */
    public record LeverResult(
            String name,
            String unit,
            BigFraction from,
            BigFraction to,
            @Nullable BigFraction step,
            @Nullable BigFraction change,
            @Nullable BigDecimal giveOrTake,
            boolean replacing) {}

    /** Mean, and the range in which the next batch lies with the probability of {@code sure}. */
    public record Middle(
            BigFraction mean,
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper) {}

    /** A taster's level above the average taster. */
    public record Taster(String name, BigFraction level) {}
}
