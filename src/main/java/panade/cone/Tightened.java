package panade.cone;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict;
import panade.compile.CompiledBrief;

/**
 * A brief's model as far as its cones had to be told in rows, and what is proved of it.
 *
 * @param compiled with the cuts that were needed; the same as asked where there are no cones
 * @param verdict on the model of that
 * @param least no blend costs less per kilogram, proved; null where the verdict's own point costs least, or there is
 *     none
 * @param cuts all that were made on the way
 */
public record Tightened(
        CompiledBrief compiled, Verdict verdict, @Nullable BigFraction least, List<Cut> cuts) {}
