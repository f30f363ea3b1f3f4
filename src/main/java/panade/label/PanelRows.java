package panade.label;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.label.Panel.Row;
import panade.label.nutrition.Amount;
import panade.label.nutrition.EuNutrients;
import panade.label.nutrition.Format;
import panade.label.nutrition.Nutrient;
import panade.label.nutrition.ProteinQuality;
import panade.label.nutrition.UsNutrients;
import panade.label.nutrition.UsRounding;
import panade.quantity.Decimal;
import panade.quantity.Quantity;

/** Works out the lines of a panel. */
record PanelRows(
        Brief brief,
        Blend blend,
        PanelRequest request,
        @Nullable Quantity serving,
        ProteinQuality protein) {
    private static final BigFraction HUNDRED_GRAMS = Decimal.of("0.1");

    List<Row> rows() {
        return nutrients(request).stream().flatMap(line -> row(line).stream()).toList();
    }

    static List<Nutrient> nutrients(PanelRequest request) {
        return request.format() == Format.US ? UsNutrients.with(request.energy().energy()) : EuNutrients.all();
    }

    /** The line; empty when it may be left out and there is nothing to print. */
    private Optional<Row> row(Nutrient line) {
        var amount = Amount.of(line.content(), brief, blend);
        var hundred = amount.per100g();
        if (!line.always() && (hundred == null || hundred.signum() == 0)) {
            return Optional.empty();
        }
        var portion = serving == null || hundred == null
                ? null
                : hundred.multiply(serving.base()).divide(HUNDRED_GRAMS);
        return Optional.of(new Row(
                line.id(),
                line.name(),
                line.level(),
                line.unit(),
                hundred,
                printed(line, hundred),
                portion,
                serving == null ? "" : printed(line, portion),
                percent(line, serving == null ? hundred : portion),
                amount.unknownFor()));
    }

    private static String printed(Nutrient line, @Nullable BigFraction amount) {
        if (amount == null) {
            return Panel.NOT_KNOWN;
        }
        var figure = line.printing().apply(amount);
        return line.unit().isEmpty() ? figure : figure + " " + line.unit();
    }

    /** That of protein counts only what the body can use; none is printed unless its score is known. */
    private String percent(Nutrient line, @Nullable BigFraction amount) {
        var daily = line.daily();
        if (daily == null || amount == null) {
            return "";
        }
        if (!isCorrected(line)) {
            return UsRounding.percent(line.percent(), amount, daily);
        }
        var score = protein.pdcaas().cut();
        return score == null ? "" : UsRounding.percent(line.percent(), amount.multiply(score), daily);
    }

    /** In the United States, 21 CFR 101.9(c)(7)(ii); the Union's reference intake is of protein as it is. */
    private boolean isCorrected(Nutrient line) {
        return request.format() == Format.US && line.id().equals("PROCNT");
    }
}
