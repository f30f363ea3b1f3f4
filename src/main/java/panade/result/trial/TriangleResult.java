package panade.result.trial;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.RemarkLine;

/**
 * A triangle test: its serving sheet and what its answers would mean.
 *
 * @param a what sample A is
 * @param b what sample B is
 * @param same whether both weigh the same, so that there is nothing to tell apart
 * @param seed that gives this sheet again
 * @param risk of calling alike samples different, as a share
 * @param leastRight the fewest right answers that show a difference; null where even all being right is no proof
 * @param outcomes what numbers of right answers would mean, by ascending number
 * @param power how often a difference would be found
 * @param found what the right answers say; null where they are not given
 * @param servings in the order in which tasters are served
 * @param allergens stated of anything in either sample
 * @param allergensNotKnown names of ingredients for which nobody says
 * @param remarks on the documents
 */
public record TriangleResult(
        String a,
        String b,
        boolean same,
        int tasters,
        long seed,
        BigFraction risk,
        @Nullable Integer leastRight,
        List<Outcome> outcomes,
        List<Power> power,
        @Nullable Found found,
        List<Serving> servings,
        List<String> allergens,
        List<String> allergensNotKnown,
        List<RemarkLine> remarks) {
    public TriangleResult {
        outcomes = List.copyOf(outcomes);
        power = List.copyOf(power);
        servings = List.copyOf(servings);
        allergens = List.copyOf(allergens);
        allergensNotKnown = List.copyOf(allergensNotKnown);
        remarks = List.copyOf(remarks);
    }

    /**
     * What a number of right answers would mean.
     *
     * @param p how often guessing alone gives as many or more
     */
    public record Outcome(int right, BigFraction p, boolean different) {}

    /**
     * How often a difference would be found.
     *
     * @param tellApart the part of people that truly tells the samples apart
     * @param found share of such tests that find it
     * @param tastersNeeded the fewest with whom four tests in five find it; null where that takes more than 300
     */
    public record Power(
            BigFraction tellApart,
            BigFraction found,
            @Nullable Integer tastersNeeded) {}

    /**
     * What was found.
     *
     * @param p how often guessing alone gives as many right answers or more
     * @param tellApartAtMost no larger part of people than this tells them apart, at the risk; 1 where nothing less can
     *     be said
     */
    public record Found(int right, BigFraction p, boolean different, BigFraction tellApartAtMost) {}

    /**
     * What one taster gets, from left to right.
     *
     * @param codes what stands on the cups
     * @param cups A or B
     * @param odd the code of the cup unlike the other two
     */
    public record Serving(int taster, List<Integer> codes, List<String> cups, int odd) {
        public Serving {
            codes = List.copyOf(codes);
            cups = List.copyOf(cups);
        }
    }
}
