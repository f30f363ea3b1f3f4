package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Unit;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.FullCostResult;
import panade.result.FullCostResult.BreakEven;

/** Words what a pound costs with labour, packaging, overhead and losses. */
public final class FullCostTable {
    private final FullCostResult cost;
    private final String currency;

    private FullCostTable(FullCostResult cost, String currency) {
        this.cost = cost;
        this.currency = currency.isEmpty() ? "" : " " + currency;
    }

    /** The table, and what else was asked of costs. */
    public static List<Block> of(FullCostResult cost, String currency) {
        var table = new FullCostTable(cost, currency);
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("What a pound costs in full"));
        blocks.add(new Table(List.of(new Column("", false), new Column("per lb", true)), table.rows()));
        if (!cost.sizes().isEmpty()) {
            blocks.add(new Paragraph("By size of the batch, same blend: " + table.sizes() + "."));
        }
        var breakEven = cost.breakEven();
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
        rows.add(List.of("ingredients, weighed in", perLb(cost.ingredientsPerKg())));
        addIf(rows, "lost in making", cost.lostPerKg());
        addIf(rows, "labour at this batch", cost.labourPerKg());
        addIf(rows, "packaging", cost.packagingPerKg());
        addIf(rows, "overhead", cost.overheadPerKg());
        rows.add(List.of("a packed lb", perLb(cost.packedPerKg())));
        var cooked = cost.cookedPerKg();
        var part = cost.yield();
        if (cooked != null && part != null) {
            rows.add(List.of(
                    "a cooked lb (" + Figures.significant(part.multiply(100), 3) + " % is left)", perLb(cooked)));
        }
        var serving = cost.servingKg();
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
                .map(size -> size.batch() + " " + Figures.cash(Figures.perPound(size.packedPerKg())))
                .toList();
        return String.join(", ", words) + currency + "/lb";
    }

    private String words(BreakEven breakEven) {
        var kilograms = breakEven.breakEvenKgMonthly();
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
