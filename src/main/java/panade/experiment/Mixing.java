package panade.experiment;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.bench.BatchSheet;

/**
 * One mixing to make.
 *
 * @param code what stands on it instead of what it is
 * @param repeats the code of the mixing that it makes again; null where it makes none again
 * @param levers as weighed, in base units
 * @param gain money per kilogram that it alone could free; null where that is not known
 */
public record Mixing(
        int code,
        Why why,
        @Nullable Integer repeats,
        List<BigFraction> levers,
        BatchSheet sheet,
        @Nullable BigDecimal gain) {
    public Mixing {
        levers = List.copyOf(levers);
    }

    /** What it is made for. */
    public enum Why {
        /** To know all coefficients together as well as can be. */
        DESIGN,
        /** For what knowing how it comes out could save. */
        GAIN,
        /** To see how much one mixing differs from the next. */
        REPEAT,
        /** To see whether the cheapest blend is what it is said to be. */
        CONFIRM
    }
}
