package panade.domain;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Quantity;

/**
 * How sure a bound is to hold although what ingredients hold varies from lot to lot.
 *
 * @param share the probability that was asked for, as written: a half or more, and less than all
 * @param quantile standard deviations that each number keeps away from the mean, rounded up. A bound with a floor and a
 *     ceiling misses either in at most half of what may be missed, so that both hold as surely as was asked.
 */
public record Sureness(Quantity share, BigFraction quantile) {}
