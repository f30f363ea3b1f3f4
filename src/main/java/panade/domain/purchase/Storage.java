package panade.domain.purchase;

import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What keeping goods from one period to the next costs and allows; weights in kilograms as bought.
 *
 * @param costPerKg money for each kilogram in store at the end of a period
 * @param most the most that may be in store, by ingredient
 * @param closing what must be in store at the very end, by ingredient
 * @param keeps how many periods an ingredient may wait in store; what would wait longer is thrown away
 */
public record Storage(
        BigFraction costPerKg,
        Map<String, BigFraction> most,
        Map<String, BigFraction> closing,
        Map<String, Integer> keeps) {
    /** Storage that costs nothing and has room for all. */
    public static final Storage FREE = new Storage(BigFraction.ZERO, Map.of(), Map.of(), Map.of());

    public Storage {
        most = Map.copyOf(most);
        closing = Map.copyOf(closing);
        keeps = Map.copyOf(keeps);
    }
}
