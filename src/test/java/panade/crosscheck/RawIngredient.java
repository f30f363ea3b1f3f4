package panade.crosscheck;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An ingredient as its document states it.
 *
 * @param values per 100 g, NA in mg; traits as scored
 * @param usable percent left after trimming
 * @param maxUse percent of the batch, 100 when the document states none
 */
record RawIngredient(
        String id, List<String> kinds, Map<String, BigDecimal> values, BigDecimal usable, BigDecimal maxUse) {

    /** Kilograms weighed in for each kilogram bought. */
    BigFraction kept() {
        return Exact.of(usable).divide(100);
    }

    RawIngredient withMaxUse(BigDecimal percent) {
        return new RawIngredient(id, kinds, values, usable, percent);
    }
}
