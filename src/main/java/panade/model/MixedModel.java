package panade.model;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * A linear model in which some columns may take whole numbers only.
 *
 * @param relaxed the model without that demand
 * @param whole indices of those columns
 */
public record MixedModel(LinearModel relaxed, Set<Integer> whole) {
    public MixedModel {
        whole = Set.copyOf(whole);
    }

    /** The linear model that is left when whole columns are held at values; columns keep their places. */
    public LinearModel holding(Map<Integer, BigInteger> values) {
        var rows = new ArrayList<>(relaxed.rows());
        new TreeMap<>(values).forEach((column, value) -> rows.add(limit(column, Sense.EQUAL, value)));
        return new LinearModel(relaxed.columns(), rows);
    }

    /** A row on one column alone. */
    public static Row limit(int column, Sense sense, BigInteger right) {
        return new Row("column " + column, LinearForm.of(column, BigFraction.ONE), sense, BigFraction.of(right));
    }

    /** The values of the whole columns at a point, rounded to the nearest. */
    public Map<Integer, BigInteger> rounded(List<BigFraction> point) {
        var values = new TreeMap<Integer, BigInteger>();
        whole.forEach(column -> values.put(column, nearest(point.get(column))));
        return values;
    }

    private static BigInteger nearest(BigFraction value) {
        var twice = value.multiply(2).add(1);
        var bottom = twice.getDenominator().multiply(BigInteger.TWO);
        var parts = twice.getNumerator().divideAndRemainder(bottom);
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }
}
