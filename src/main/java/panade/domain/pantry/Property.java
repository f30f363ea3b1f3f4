package panade.domain.pantry;

import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Unit;

/**
 * Something that mixes linearly by mass: an INFOODS component or a trait that the ingredient set declares.
 *
 * @param id tagname or trait name
 * @param title what it means to a cook
 * @param unit the unit its values are written in
 * @param component whether it is an INFOODS component, which {@code "others": 0} covers
 * @param absent what an ingredient has that does not state it, in its unit; null when that is unknown
 * @param sum weights of other properties' numbers that make it up; empty when it is only ever stated
 */
public record Property(
        String id,
        String title,
        Unit unit,
        boolean component,
        @Nullable BigFraction absent,
        Map<String, BigFraction> sum) {}
