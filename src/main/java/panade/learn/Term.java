package panade.learn;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A product of levers that a response depends on linearly.
 *
 * @param levers their numbers from nought, in ascending order, one as often as it is a factor; empty is the constant
 */
public record Term(List<Integer> levers) {
    public Term {
        levers = List.copyOf(levers);
    }

    /** The product of levers of these numbers. */
    public static Term of(Integer... levers) {
        return new Term(List.of(levers));
    }

    /** Its value where the levers have these values. */
    public BigFraction at(List<BigFraction> values) {
        var product = BigFraction.ONE;
        for (int lever : levers) {
            product = product.multiply(values.get(lever));
        }
        return product;
    }

    /** How fast it grows along a direction, from a point. */
    BigFraction slope(List<BigFraction> point, List<BigFraction> direction) {
        var slope = BigFraction.ZERO;
        for (int i = 0; i < levers.size(); i++) {
            var others = new ArrayList<>(levers);
            int moved = others.remove(i);
            slope = slope.add(direction.get(moved).multiply(new Term(others).at(point)));
        }
        return slope;
    }
}
