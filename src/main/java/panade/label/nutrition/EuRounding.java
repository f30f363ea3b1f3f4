package panade.label.nutrition;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.label.nutrition.RoundingRule.Band;

/**
 * How amounts are printed under Regulation (EU) 1169/2011 by the Commission's guidance on tolerances and rounding,
 * December 2012 (guidance, not law; thresholds from memory, also seen in secondary texts).
 */
final class EuRounding {
    private static final String GUIDANCE = "Commission guidance on tolerances, December 2012, section 6";

    static final RoundingRule ENERGY = RoundingRule.keepingZeros(GUIDANCE, Band.rest("1"));

    /** Fat, carbohydrate, sugars, protein, fibre, polyols, starch. */
    static final RoundingRule GRAMS =
            RoundingRule.keepingZeros(GUIDANCE, Band.upTo("0.5", "0"), Band.nearUnder("10", "0.1"), Band.rest("1"));

    /** Saturates, mono-unsaturates, polyunsaturates. */
    static final RoundingRule SATURATES =
            RoundingRule.keepingZeros(GUIDANCE, Band.upTo("0.1", "0"), Band.nearUnder("10", "0.1"), Band.rest("1"));

    static final RoundingRule SALT = RoundingRule.keepingZeros(
            GUIDANCE, Band.upTo("0.0125", "0"), Band.nearUnder("1", "0.01"), Band.rest("0.1"));

    static final RoundingRule SODIUM =
            RoundingRule.keepingZeros(GUIDANCE, Band.upTo("0.005", "0"), Band.nearUnder("1", "0.01"), Band.rest("0.1"));

    private EuRounding() {}

    /** A vitamin or mineral to two or three significant figures, halves up. */
    static String significant(BigFraction amount, int figures) {
        var exact = new BigDecimal(amount.getNumerator());
        var context = new MathContext(figures, RoundingMode.HALF_UP);
        return RoundingRule.plain(exact.divide(new BigDecimal(amount.getDenominator()), context));
    }
}
