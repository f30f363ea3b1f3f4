package panade.domain.trial;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.origin.Origin;

/**
 * One mixing and what was measured on it.
 *
 * @param weighed as weighed, which may differ from what was planned
 * @param process how it was made, by the name of the setting
 * @param measured by the name of the response
 * @param group the first trial that this one repeats, or itself
 * @param date as its cook wrote it; empty where none is stated
 * @param block what it shares with others, such as a day; empty where no block is stated
 */
public record Trial(
        String id,
        Weighed weighed,
        Map<String, BigFraction> process,
        Map<String, List<Measurement>> measured,
        String group,
        String date,
        String block,
        Origin origin) {
    public Trial {
        process = Map.copyOf(process);
        measured = Map.copyOf(measured);
    }

    /** A figure, and who tasted; empty for what was measured with something that has no taste. */
    public record Measurement(BigFraction value, String by) {}
}
