package panade.design;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Rows kept as long as each tells something that those before it do not; by elimination. */
final class Independent {
    private final List<List<BigFraction>> reduced = new ArrayList<>();

    /** Keeps a row if it is no sum of multiples of those kept. */
    boolean keep(List<BigFraction> row) {
        var left = new ArrayList<>(row);
        for (var each : reduced) {
            int lead = lead(each);
            var factor = left.get(lead).divide(each.get(lead));
            for (int i = 0; i < left.size() && factor.signum() != 0; i++) {
                left.set(i, left.get(i).subtract(factor.multiply(each.get(i))));
            }
        }
        return lead(left) < left.size() && reduced.add(left);
    }

    private static int lead(List<BigFraction> row) {
        int lead = 0;
        while (lead < row.size() && row.get(lead).signum() == 0) {
            lead++;
        }
        return lead;
    }
}
