package panade.experiment;

import java.math.BigDecimal;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;

/**
 * What to mix next.
 *
 * @param mixings in the order in which to make them
 * @param region the points that they were chosen from
 * @param blend the cheapest now that is as sure as asked, or as cheap as the brief allows where nothing is asked
 * @param together money per kilogram that all of them could free together; null where that is not known
 * @param most money per kilogram that the best single mixing could free; null likewise
 * @param isDone whether no mixing could free enough to be worth making
 * @param unweighed how many points were passed over since no weights on the scale keep every bound there
 * @param open why what mixings are worth is not known, as a sentence; null where it is
 */
public record MixingPlan(
        Levers levers,
        List<Mixing> mixings,
        List<List<BigFraction>> region,
        Blend blend,
        @Nullable BigDecimal together,
        @Nullable BigDecimal most,
        boolean isDone,
        int unweighed,
        @Nullable String open) {
    public MixingPlan {
        mixings = List.copyOf(mixings);
        region = List.copyOf(region);
    }
}
