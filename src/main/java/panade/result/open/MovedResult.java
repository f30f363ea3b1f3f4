package panade.result.open;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;

/**
 * What differs between two blends of one product.
 *
 * @param fromPerKg what the first costs, in money per kilogram
 * @param toPerKg what the second costs
 * @param shares shares of the batch that moved, by how much, most first
 * @param bindings bounds that the second touches elsewhere than the first
 */
public record MovedResult(
        BigFraction fromPerKg, BigFraction toPerKg, List<ShareMoved> shares, List<BindingMoved> bindings) {
    public MovedResult {
        shares = List.copyOf(shares);
        bindings = List.copyOf(bindings);
    }

    /** A share of the batch over all stages. */
    public record ShareMoved(String name, BigFraction from, BigFraction to) {
        /** By how much it moved; below zero where there is less of it. */
        public BigFraction change() {
            return to.subtract(from);
        }
    }

    /**
     * A bound that is touched elsewhere.
     *
     * @param to null where it is not touched
     */
    public record BindingMoved(String title, @Nullable Side to) {}
}
