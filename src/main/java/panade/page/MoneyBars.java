package panade.page;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.page.Content.Money;
import panade.page.Content.MoneyBar;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.report.Figures;
import panade.report.blend.FullCostTable;
import panade.result.BlendResult;
import panade.result.BlendResult.IngredientCost;

/** What each ingredient takes of the money, dearest first, beside what it takes of the weight. */
final class MoneyBars {
    /** Less of the money than this is told in one line with all the others. */
    private static final BigFraction MIN_SHOWN_SHARE = BigFraction.of(1, 100);

    private MoneyBars() {}

    static Money of(BlendResult result) {
        var shown = result.money().stream()
                .filter(each -> each.costShare().compareTo(MIN_SHOWN_SHARE) >= 0)
                .toList();
        var longest = shown.stream()
                .flatMap(each -> Stream.of(each.costShare(), each.share()))
                .reduce(MIN_SHOWN_SHARE, Fractions::max);
        var full = result.fullCost();
        var currency = result.brief().currency();
        return new Money(
                currency,
                shown.stream().map(each -> bar(each, longest)).toList(),
                rest(result.money().subList(shown.size(), result.money().size())),
                full == null ? List.of() : FullCostTable.of(full, currency));
    }

    private static MoneyBar bar(IngredientCost each, BigFraction longest) {
        return new MoneyBar(
                each.name(),
                Figures.money(Figures.perPound(each.costPerKg())),
                Figures.percent(each.costShare()),
                Figures.percent(each.share()),
                width(each.costShare(), longest),
                width(each.share(), longest));
    }

    private static String width(BigFraction part, BigFraction longest) {
        return Decimal.round(part.multiply(100).divide(longest), 2).toPlainString();
    }

    private static String rest(List<IngredientCost> others) {
        if (others.isEmpty()) {
            return "";
        }
        boolean one = others.size() == 1;
        return others.size() + (one ? " other takes " : " others together take ")
                + Figures.percent(sum(others, IngredientCost::costShare)) + " % of the money and "
                + (one ? "is " : "are ") + Figures.percent(sum(others, IngredientCost::share)) + " % of the weight.";
    }

    private static BigFraction sum(List<IngredientCost> some, Function<IngredientCost, BigFraction> figure) {
        return some.stream().map(figure).reduce(BigFraction.ZERO, BigFraction::add);
    }
}
