package panade.cone;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;

/** Square roots as short decimals that are checked to lie on the safe side. */
final class Roots {
    private static final MathContext DIGITS = new MathContext(20, RoundingMode.HALF_EVEN);

    /** Relative, far above what twenty digits leave out. */
    private static final BigDecimal RAISED = new BigDecimal("1.000000000000000001");

    private Roots() {}

    /** A decimal whose square is no less than the number. */
    static BigFraction above(BigFraction square) {
        if (square.signum() == 0) {
            return BigFraction.ZERO;
        }
        var near = Decimal.significant(square, DIGITS.getPrecision());
        var root = Decimal.of(near.sqrt(DIGITS).multiply(RAISED, DIGITS));
        if (root.multiply(root).compareTo(square) < 0) {
            throw new IllegalStateException("a root from above lies below");
        }
        return root;
    }
}
