package panade.export;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.quantity.Decimal;

/**
 * A requirement in decimals that end, and so say exactly what its fractions say: where some would go on for ever, the
 * whole row is multiplied by a number that makes them end, and by a power of ten that makes it of common size.
 *
 * @param terms by column, in order; never empty
 * @param times what the row was multiplied by
 */
record DecimalRow(List<Term> terms, Sense sense, BigDecimal right, BigFraction times) {
    private static final BigInteger FIVE = BigInteger.valueOf(5);

    /** More digits than binary floating point holds. */
    private static final int DIGITS = 17;

    /** A coefficient of a column. */
    record Term(int column, BigDecimal coefficient) {}

    static DecimalRow of(Row row) {
        var numbers = new ArrayList<>(row.form().values());
        numbers.add(row.right());
        var ending = ending(numbers);
        var times = ending.multiply(size(row, ending));
        var terms = new ArrayList<Term>();
        row.form().scaled(times).forEach((column, value) -> terms.add(new Term(column, exact(value))));
        if (terms.isEmpty()) {
            terms.add(new Term(0, BigDecimal.ZERO));
        }
        return new DecimalRow(List.copyOf(terms), row.sense(), exact(row.right().multiply(times)), times);
    }

    /** A whole number that turns all numbers into decimals that end. */
    private static BigFraction ending(Collection<BigFraction> numbers) {
        var multiple = BigInteger.ONE;
        for (var number : numbers) {
            var rest = endless(number);
            multiple = multiple.divide(multiple.gcd(rest)).multiply(rest);
        }
        return BigFraction.of(multiple);
    }

    /** The power of ten that brings the largest coefficient to between one and ten, as far as one digit tells. */
    private static BigFraction size(Row row, BigFraction times) {
        var largest = row.form().values().stream()
                .map(value -> Decimal.significant(value.multiply(times).abs(), 1))
                .max(BigDecimal::compareTo)
                .filter(value -> value.signum() != 0)
                .orElse(BigDecimal.ONE);
        return Decimal.of(BigDecimal.ONE.scaleByPowerOfTen(largest.scale() - largest.precision() + 1));
    }

    /** What is left of a denominator without its twos and fives: one if the decimal ends. */
    private static BigInteger endless(BigFraction number) {
        var rest = number.getDenominator().abs();
        rest = rest.shiftRight(rest.getLowestSetBit());
        for (var parts = rest.divideAndRemainder(FIVE); parts[1].signum() == 0; parts = rest.divideAndRemainder(FIVE)) {
            rest = parts[0];
        }
        return rest;
    }

    private static BigDecimal exact(BigFraction number) {
        var quotient = new BigDecimal(number.getNumerator()).divide(new BigDecimal(number.getDenominator()));
        var stripped = quotient.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped;
    }

    /** A number as a decimal: exactly where it ends, else to {@value #DIGITS} significant digits. */
    static BigDecimal cost(BigFraction number) {
        return ends(number) ? exact(number) : Decimal.significant(number, DIGITS);
    }

    /** Whether a number is a decimal that ends. */
    static boolean ends(BigFraction number) {
        return endless(number).equals(BigInteger.ONE);
    }
}
