package panade.label.nutrition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;

/**
 * How much of something a blend holds.
 *
 * @param per100g in the unit of its line; null when it is not known
 * @param unknownFor names of the ingredients whose value is missing
 */
public record Amount(@Nullable BigFraction per100g, List<String> unknownFor) {
    public Amount {
        unknownFor = List.copyOf(unknownFor);
    }

    /** What a blend holds of some content. */
    public static Amount of(Content content, Brief brief, Blend blend) {
        var total = BigFraction.ZERO;
        var unknown = new ArrayList<String>();
        for (var each : shares(brief, blend).entrySet()) {
            var form = content.form(each.getKey(), brief.composition());
            if (form.isEmpty()) {
                unknown.add(each.getKey().name());
            } else {
                var value = Content.value(form.get(), each.getKey(), brief.composition());
                total = total.add(value.multiply(each.getValue()));
            }
        }
        return new Amount(unknown.isEmpty() ? total : null, unknown);
    }

    /** Share of the batch by ingredient, in the order of the blend. */
    public static Map<Ingredient, BigFraction> shares(Brief brief, Blend blend) {
        var shares = new LinkedHashMap<Ingredient, BigFraction>();
        blend.lines()
                .forEach(line ->
                        shares.merge(brief.set().ingredient(line.use().ingredient()), line.share(), BigFraction::add));
        return shares;
    }
}
