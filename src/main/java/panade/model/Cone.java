package panade.model;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A second-order cone beside the rows of a linear model: a column of its own is at least the square root of a sum of
 * squares. The row that the column stands in gives way to it, so that the row keeps clear of its right side.
 *
 * @param column the column, which costs nothing and stands in no other row
 * @param row the row that keeps clear by as much as the column says
 * @param parts the squares added up
 */
public record Cone(int column, int row, List<Part> parts) {
    public Cone {
        parts = List.copyOf(parts);
    }

    /**
     * The square of a form, weighted.
     *
     * @param weight above zero
     */
    public record Part(BigFraction weight, LinearForm form) {
        public Part {
            if (weight.signum() <= 0) {
                throw new IllegalArgumentException("a square that does not count");
            }
        }
    }

    /** The square of what the column is at least, at a point. */
    public BigFraction squareAt(List<BigFraction> point) {
        var sum = BigFraction.ZERO;
        for (var part : parts) {
            var value = part.form().dot(point);
            sum = sum.add(value.multiply(value).multiply(part.weight()));
        }
        return sum;
    }
}
