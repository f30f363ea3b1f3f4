package panade.whatif;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.TypedField;
import panade.domain.purchase.OfferId;

/**
 * What somebody types in place of what the documents say.
 *
 * @param batch the batch; null to keep it
 * @param target the price to hope for, blank for none; null to keep it
 * @param limits numbers of bounds
 * @param prices prices per weight, such as {@code 3.10/lb}, by offer
 * @param out offers that cannot be had
 */
public record Changes(
        @Nullable String batch,
        @Nullable String target,
        List<TypedField> limits,
        Map<OfferId, String> prices,
        Set<OfferId> out) {
    /** Everything as it is written. */
    public static final Changes NONE = new Changes(null, null, List.of(), Map.of(), Set.of());

    public Changes {
        limits = List.copyOf(limits);
        prices = Map.copyOf(prices);
        out = Set.copyOf(out);
    }
}
