package panade.learn;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What one mixing came to.
 *
 * @param levers their values
 * @param weight how much it counts; the error's variance is that of a weight of one divided by this
 * @param group observations of one group repeat each other
 * @param block observations of one block share what was common to it, such as a day
 */
public record Observation(
        List<BigFraction> levers, BigFraction response, BigFraction weight, String group, String block) {
    public Observation {
        levers = List.copyOf(levers);
    }

    /** One of usual weight in the only block; what has the same levers repeats it. */
    public static Observation of(List<BigFraction> levers, BigFraction response) {
        return new Observation(levers, response, BigFraction.ONE, levers.toString(), "");
    }
}
