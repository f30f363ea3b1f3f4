package panade.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.cost.FullCost;
import panade.cost.OptionalSections.BreakEven;
import panade.domain.Brief;
import panade.quantity.Unit;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;

/** Words what a pound costs with labour, packaging, overhead and losses. */
public final class FullCostTable {
    private final FullCost cost;
    private final String currency;

    private FullCostTable(FullCost cost, Brief brief) {
        this.cost = cost;
        this.currency = brief.currency().isEmpty() ? "" : " " + brief.currency();
    }

    /** The table, and what else was asked of costs. */
    public static List<Block> of(FullCost cost, Brief brief, @Nullable BreakEven breakEven) {
        var table = new FullCostTable(cost, brief);
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("What a pound costs in full"));
        blocks.add(new Table(List.of(new Column("", false), new Column("per lb", true)), table.rows()));
        if (!cost.sizes().isEmpty()) {
            blocks.add(new Paragraph("By size of the batch, same blend: " + table.sizes() + "."));
        }
        if (breakEven != null) {
            blocks.add(new Paragraph(table.words(breakEven)));
        }
        return blocks;
    }

    private static String perLb(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private List<List<String>> rows() {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("ingredients, weighed in", perLb(cost.ingredients())));
        addIf(rows, "lost in making", cost.packedIngredients().subtract(cost.ingredients()));
        addIf(rows, "labour at this batch", cost.labour());
        addIf(rows, "packaging", cost.packaging());
        addIf(rows, "overhead", cost.overhead());
        rows.add(List.of("a packed lb", perLb(cost.packed())));
        var cooked = cost.cooked();
        var part = cost.cookedPart();
        if (cooked != null && part != null) {
            rows.add(List.of(
                    "a cooked lb (" + Figures.significant(part.multiply(100), 3) + " % is left)", perLb(cooked)));
        }
        var serving = cost.serving();
        var each = cost.perServing();
        if (serving != null && each != null) {
            rows.add(List.of("a serving of " + Figures.grams(serving) + " g, raw", Figures.money(each)));
        }
        return rows;
    }

    private static void addIf(List<List<String>> rows, String words, BigFraction perKg) {
        if (perKg.signum() != 0) {
            rows.add(List.of(words, perLb(perKg)));
        }
    }

    private String sizes() {
        var words = cost.sizes().stream()
                .map(size -> size.batch().text() + " " + Figures.cash(Figures.perPound(size.packed())))
                .toList();
        return String.join(", ", words) + currency + "/lb";
    }

    private String words(BreakEven breakEven) {
        var kilograms = cost.breakEven(breakEven.fixedMonthly(), breakEven.pricePerKg());
        var paid = Figures.cash(Figures.perPound(breakEven.pricePerKg())) + currency + "/lb";
        if (kilograms == null) {
            return "At " + paid + " every lb sold loses money, so nothing pays fixed costs.";
        }
        return "Break-even: fixed costs of " + Figures.cash(breakEven.fixedMonthly()) + currency
                + " a month are paid once " + Figures.wholeUp(Unit.POUND.fromBase(kilograms))
                + " lb a month are sold at "
                + paid + ", all but overhead counted as it is here.";
    }
}
