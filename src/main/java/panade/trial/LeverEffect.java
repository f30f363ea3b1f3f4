package panade.trial;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.trial.Lever;
import panade.learn.Prediction;

/**
 * What a lever does, seen from the middle of the trials.
 *
 * @param from the least that was tried, in base units
 * @param to the most
 * @param slope of the response for one base unit of the lever; null where nothing was fitted or the lever stood still
 * @param replacing whether the other levers make room for it, in proportion
 */
public record LeverEffect(
        Lever lever,
        BigFraction from,
        BigFraction to,
        @Nullable Prediction slope,
        boolean replacing) {
    /** Whether trials differ in it at all. */
    public boolean isMoved() {
        return !from.equals(to);
    }

    /** Whether a value lies within what was tried. */
    public boolean isTried(BigFraction value) {
        return value.compareTo(from) >= 0 && value.compareTo(to) <= 0;
    }
}
