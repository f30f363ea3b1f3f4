package panade.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.cost.FullCost;
import panade.cost.OptionalSections;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.page.Content.Money;
import panade.page.Content.MoneyBar;
import panade.plan.Outcome.Blended;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.report.Block;
import panade.report.Figures;
import panade.report.FullCostTable;

/** What each ingredient takes of the money, dearest first, beside what it takes of the weight. */
final class MoneyBars {
    /** Less of the money than this is told in one line with all the others. */
    private static final BigFraction MIN_SHOWN_SHARE = BigFraction.of(1, 100);

    private final Brief brief;
    private final Blend blend;
    private final Map<String, BigFraction> costs = new LinkedHashMap<>();

    private MoneyBars(Blended blended) {
        this.brief = blended.brief();
        this.blend = blended.blend();
        blend.lines().forEach(line -> costs.merge(line.use().ingredient(), line.costPerKg(), BigFraction::add));
    }

    static Money of(Blended blended, OptionalSections asides) {
        return new MoneyBars(blended).money(asides);
    }

    /** A cost as a part of what all ingredients cost. */
    static BigFraction part(BigFraction cost, Blend blend) {
        var total = blend.rawCostPerKg();
        return total.signum() == 0 ? BigFraction.ZERO : cost.divide(total);
    }

    private Money money(OptionalSections asides) {
        var dearest = costs.keySet().stream()
                .sorted((a, b) -> costOf(b).compareTo(costOf(a)))
                .toList();
        var shown = dearest.stream()
                .filter(id -> part(costOf(id), blend).compareTo(MIN_SHOWN_SHARE) >= 0)
                .toList();
        var longest = shown.stream()
                .flatMap(id -> List.of(part(costOf(id), blend), blend.shareOf(id)).stream())
                .reduce(MIN_SHOWN_SHARE, Fractions::max);
        List<Block> full = FullCost.isStated(brief)
                ? FullCostTable.of(FullCost.of(brief, blend), brief, asides.breakEven())
                : List.of();
        return new Money(
                brief.currency(),
                shown.stream().map(id -> bar(id, longest)).toList(),
                rest(dearest.subList(shown.size(), dearest.size())),
                full);
    }

    private BigFraction costOf(String id) {
        return costs.getOrDefault(id, BigFraction.ZERO);
    }

    private MoneyBar bar(String id, BigFraction longest) {
        var part = part(costOf(id), blend);
        var share = blend.shareOf(id);
        return new MoneyBar(
                brief.set().ingredient(id).name(),
                Figures.money(Figures.perPound(costOf(id))),
                Figures.percent(part),
                Figures.percent(share),
                width(part, longest),
                width(share, longest));
    }

    private static String width(BigFraction part, BigFraction longest) {
        return Decimal.round(part.multiply(100).divide(longest), 2).toPlainString();
    }

    private String rest(List<String> ids) {
        if (ids.isEmpty()) {
            return "";
        }
        var cost = ids.stream().map(this::costOf).reduce(BigFraction.ZERO, BigFraction::add);
        var share = ids.stream().map(blend::shareOf).reduce(BigFraction.ZERO, BigFraction::add);
        return ids.size() + (ids.size() == 1 ? " other takes " : " others together take ")
                + Figures.percent(part(cost, blend)) + " % of the money and " + (ids.size() == 1 ? "is " : "are ")
                + Figures.percent(share)
                + " % of the weight.";
    }
}
