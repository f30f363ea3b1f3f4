package panade.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The normal quantile against a printed table, and against the series of the distribution in decimals. */
class NormalQuantileTest {
    private static final MathContext DIGITS = new MathContext(60);

    /** 2 pi to 60 digits. */
    private static final BigDecimal TWO_PI =
            new BigDecimal("6.28318530717958647692528676655900576839433879875021164194989");

    /** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 and 7.1.4: critical values. */
    @ParameterizedTest
    @CsvSource({"0.80, 0.842", "0.90, 1.282", "0.95, 1.645", "0.975, 1.960", "0.99, 2.326", "0.999, 3.090"})
    void the_printed_table_is_met(String share, double printed) {
        assertThat(Distributions.normal(exact(share)).doubleValue()).isCloseTo(printed, within(0.0006));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"0.5", "0.6", "0.75", "0.8", "0.9", "0.95", "0.975", "0.98", "0.99", "0.995", "0.999", "0.99999"
            })
    void a_quantile_lies_on_the_safe_side_and_no_further_than_its_rounding(String share) {
        var quantile = Distributions.normal(exact(share));
        assertThat(below(quantile)).isGreaterThanOrEqualTo(new BigDecimal(share));
        if (quantile.signum() > 0) {
            assertThat(below(quantile.subtract(new BigDecimal("1e-10")))).isLessThan(new BigDecimal(share));
        }
    }

    /** 1/2 + (z - z^3/6 + z^5/40 - ...) / sqrt(2 pi), Abramowitz and Stegun 26.2.10. */
    private static BigDecimal below(BigDecimal z) {
        var sum = BigDecimal.ZERO;
        var power = z;
        for (int k = 0; k < 120; k++) {
            sum = sum.add(power.divide(BigDecimal.valueOf(2L * k + 1), DIGITS), DIGITS);
            power = power.multiply(z).multiply(z).negate().divide(BigDecimal.valueOf(2L * (k + 1)), DIGITS);
        }
        return new BigDecimal("0.5").add(sum.divide(TWO_PI.sqrt(DIGITS), DIGITS));
    }

    private static BigFraction exact(String share) {
        return panade.quantity.Decimal.of(share);
    }
}
