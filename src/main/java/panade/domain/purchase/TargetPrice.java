package panade.domain.purchase;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A price per weight that somebody hopes for.
 *
 * @param perKg money per kilogram
 * @param text as written, such as {@code 3.90/lb}
 */
public record TargetPrice(BigFraction perKg, String text) {}
