package panade.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;
import panade.label.nutrition.Amount;
import panade.label.nutrition.Content;
import panade.label.nutrition.Format;
import panade.label.nutrition.Nutrient;
import panade.quantity.Decimal;
import panade.quantity.Quantity;

/** Compares what is declared with what the ingredients' spread lets a laboratory find. */
record ComplianceRows(Brief brief, Blend blend, @Nullable Quantity serving) {
    private static final BigFraction HUNDRED_GRAMS = Decimal.of("0.1");

    /** The declared lines; none when no ingredient of the blend states a spread. */
    List<Compliance> of(PanelRequest request) {
        var stated = Amount.shares(brief, blend).keySet().stream()
                .anyMatch(ingredient -> !ingredient.spread().isEmpty());
        return stated
                ? PanelRows.nutrients(request).stream()
                        .flatMap(line -> row(line, request.format()).stream())
                        .toList()
                : List.of();
    }

    /** The line; empty when it declares nothing or there is no tolerance on it. */
    private Optional<Compliance> row(Nutrient line, Format format) {
        var hundred = Amount.of(line.content(), brief, blend).per100g();
        if (hundred == null || hundred.signum() == 0) {
            return Optional.empty();
        }
        var size = serving == null || format == Format.EU
                ? BigFraction.ONE
                : serving.base().divide(HUNDRED_GRAMS);
        var expected = hundred.multiply(size);
        var declared = line.declared(expected);
        if (declared.signum() == 0) {
            return Optional.empty();
        }
        var unknown = new ArrayList<String>();
        var variance = variance(line.content(), unknown);
        return Tolerance.on(line.id(), declared, format)
                .map(tolerance -> new Compliance(
                        line.id(),
                        line.name(),
                        line.printing().apply(expected) + (line.unit().isEmpty() ? "" : " " + line.unit()),
                        tolerance.low(),
                        tolerance.high(),
                        expected,
                        unknown.isEmpty() ? variance.multiply(size).multiply(size) : null,
                        unknown,
                        tolerance.source()));
    }

    /** The variance per 100 g; ingredients without a spread are noted. */
    private BigFraction variance(Content content, List<String> unknown) {
        var total = BigFraction.ZERO;
        for (var each : Amount.shares(brief, blend).entrySet()) {
            var form = content.form(each.getKey(), brief.composition()).orElseThrow();
            var own = variance(each.getKey(), form);
            if (own.isEmpty()) {
                unknown.add(each.getKey().name());
            } else {
                total = total.add(own.get().multiply(square(each.getValue())));
            }
        }
        return total;
    }

    private Optional<BigFraction> variance(Ingredient ingredient, Map<String, BigFraction> form) {
        var total = BigFraction.ZERO;
        for (var term : form.entrySet()) {
            var own = variance(ingredient, term.getKey());
            if (own.isEmpty()) {
                return Optional.empty();
            }
            total = total.add(own.get().multiply(square(term.getValue())));
        }
        return Optional.of(total);
    }

    /** That of a component: stated, or of the parts of a sum; what an ingredient has nothing of does not vary. */
    private Optional<BigFraction> variance(Ingredient ingredient, String tagname) {
        var spread = ingredient.spread().get(tagname);
        if (spread != null) {
            return Optional.of(square(spread));
        }
        var sum = brief.set().property(tagname).sum();
        if (!sum.isEmpty() && !ingredient.values().containsKey(tagname)) {
            return variance(ingredient, sum);
        }
        return brief.composition().stated(ingredient.id(), tagname).filter(value -> value.signum() == 0);
    }

    private static BigFraction square(BigFraction value) {
        return value.multiply(value);
    }
}
