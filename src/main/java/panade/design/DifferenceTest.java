package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A test of whether people can tell two samples apart, one-sided: so many right answers or more, against what guessing
 * gives. Every probability is exact.
 *
 * @param chance how often a guess is right
 */
public record DifferenceTest(BigFraction chance) {
    /** Three cups, two of them alike: which is the odd one (ISO 4120, from memory). */
    public static final DifferenceTest TRIANGLE = new DifferenceTest(BigFraction.of(1, 3));

    /** One of two is to be named, as in a duo-trio test, or a paired one whose answer is known beforehand. */
    public static final DifferenceTest ONE_OF_TWO = new DifferenceTest(BigFraction.of(1, 2));

    /** How often at least so many of the tasters would be right if all of them guessed. */
    public BigFraction p(int right, int tasters) {
        return atLeast(right, tasters, chance);
    }

    /**
     * The fewest right answers that guessing gives no more often than a risk; empty where even all being right is no
     * proof.
     *
     * @param risk of calling alike samples different
     */
    public Optional<Integer> leastRight(int tasters, BigFraction risk) {
        var tails = tails(tasters, chance);
        return IntStream.rangeClosed(0, tasters)
                .boxed()
                .filter(right -> tails.get(right).compareTo(risk) <= 0)
                .findFirst();
    }

    /**
     * How often the test finds a difference where a part of people truly tell the samples apart and the others guess.
     *
     * @param tellApart the part of people, from 0 to 1
     */
    public BigFraction power(int tasters, BigFraction risk, BigFraction tellApart) {
        return leastRight(tasters, risk)
                .map(least -> atLeast(least, tasters, right(tellApart)))
                .orElse(BigFraction.ZERO);
    }

    /**
     * The fewest tasters with whom a difference is found often enough; empty where that takes more than there are.
     *
     * @param power how often it is to be found
     */
    public Optional<Integer> leastTasters(BigFraction risk, BigFraction tellApart, BigFraction power, int most) {
        return IntStream.rangeClosed(1, most)
                .boxed()
                .filter(tasters -> power(tasters, risk, tellApart).compareTo(power) >= 0)
                .findFirst();
    }

    /**
     * The least whole per cent of people of whom it can be said that no larger part tells the samples apart: if more
     * did, so few right answers would be rarer than the risk.
     *
     * @param risk of saying so wrongly
     * @return from 0 to 100; 100 where so many are right that nothing less can be said
     */
    public int mostTellApart(int right, int tasters, BigFraction risk) {
        return IntStream.range(0, 100)
                .filter(part -> {
                    var each = right(BigFraction.of(part, 100));
                    return BigFraction.ONE
                                    .subtract(atLeast(right + 1, tasters, each))
                                    .compareTo(risk)
                            <= 0;
                })
                .findFirst()
                .orElse(100);
    }

    /** How often somebody is right where a part of people tell the samples apart and the others guess. */
    private BigFraction right(BigFraction tellApart) {
        return tellApart.add(BigFraction.ONE.subtract(tellApart).multiply(chance));
    }

    private static BigFraction atLeast(int right, int tasters, BigFraction each) {
        return right > tasters ? BigFraction.ZERO : tails(tasters, each).get(right);
    }

    /** The upper tails of the binomial distribution by the fewest right, in whole numbers over one denominator. */
    private static List<BigFraction> tails(int tasters, BigFraction each) {
        var hit = each.getNumerator();
        var miss = each.getDenominator().subtract(hit);
        var all = each.getDenominator().pow(tasters);
        var ways = BigInteger.ONE;
        var sum = BigInteger.ZERO;
        var tails = new ArrayList<BigFraction>();
        for (int k = tasters; k >= 0; k--) {
            sum = sum.add(ways.multiply(hit.pow(k)).multiply(miss.pow(tasters - k)));
            tails.add(BigFraction.of(sum, all));
            ways = ways.multiply(BigInteger.valueOf(k)).divide(BigInteger.valueOf(tasters - k + 1L));
        }
        Collections.reverse(tails);
        return tails;
    }
}
