package panade.domain;

import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Quantity;

/**
 * What a brief says beyond the blend itself, checked when it is read and used by the commands that need it.
 *
 * @param hasRules whether the brief states rules or a ceiling on the number of ingredients
 * @param rulesOrigin where they are written; null when there are none
 * @param cookingLoss fraction of each component that is lost in cooking
 * @param costBasis {@code raw} or {@code cooked}
 * @param costs what it costs beside ingredients; null when not stated
 * @param shelf what it sells for; null when not stated
 * @param weighing the scale's resolution; null when not stated
 * @param serving the weight of a serving; null when not stated
 */
public record Practice(
        boolean hasRules,
        @Nullable Origin rulesOrigin,
        Map<String, BigFraction> cookingLoss,
        String costBasis,
        @Nullable Costs costs,
        @Nullable Shelf shelf,
        @Nullable Quantity weighing,
        @Nullable Quantity serving) {}
