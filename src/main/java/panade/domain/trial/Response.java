package panade.domain.trial;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;
import panade.learn.Form;

/**
 * Something that is measured on a mixing.
 *
 * @param unit as its cook writes it; empty for scores
 * @param scale what it can be; null where it has no ends
 * @param standsFor the trait that a brief bounds in its place today; null when it stands for none
 * @param levers that it may follow
 * @param form how far it may bend; null to have that chosen by the checks
 * @param constant whether it has a level that no lever explains; null where the levers decide that
 */
public record Response(
        String name,
        String unit,
        @Nullable Scale scale,
        @Nullable String standsFor,
        List<Lever> levers,
        @Nullable Form form,
        @Nullable Boolean constant,
        Origin origin) {
    public Response {
        levers = List.copyOf(levers);
    }

    /** The least and the most that can be measured. */
    public record Scale(BigFraction least, BigFraction most) {
        /** Whether a figure lies on it. */
        public boolean holds(BigFraction value) {
            return value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
        }
    }
}
