package panade.buy;

import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is left at the end counts for, as a part of the lowest price it can be had at.
 *
 * @param usual for all that is not named
 * @param named by ingredient
 */
public record LeftoverWorth(BigFraction usual, Map<String, BigFraction> named) {
    /** Leftovers count for nothing. */
    public static final LeftoverWorth NOTHING = new LeftoverWorth(BigFraction.ZERO, Map.of());

    public LeftoverWorth {
        named = Map.copyOf(named);
    }

    /** The part of its price that a leftover of an ingredient counts for. */
    public BigFraction of(String ingredient) {
        return named.getOrDefault(ingredient, usual);
    }

    boolean isNothing() {
        return usual.signum() == 0 && named.values().stream().allMatch(share -> share.signum() == 0);
    }
}
