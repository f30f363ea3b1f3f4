package panade.report.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.report.blend.FullCostTable;
import panade.result.formula.MadeNow;
import panade.result.formula.MadeNow.Broken;
import panade.result.formula.MadeNow.Difference;
import panade.result.formula.MadeNow.Named;
import panade.result.formula.MadeResult;

/** Words what a formula costs, holds and breaks, and where its distance from the cheapest blend comes from. */
public final class MadeReport {
    /** Differences that are shown one by one. */
    private static final int ROWS = 10;

    private static final int DIGITS = 4;

    private final MadeNow now;
    private final MadeResult made;
    private final String currency;

    private MadeReport(MadeNow now) {
        this.now = now;
        this.made = now.made();
        this.currency = made.cost().currency() == null ? "" : " " + made.cost().currency();
    }

    /** The report. */
    public static ReportDocument of(MadeNow now) {
        return new MadeReport(now).document();
    }

    private ReportDocument document() {
        return Remarks.on(new ReportDocument(now.title(), blocks()), now.remarks());
    }

    /** Everything but the remarks. */
    public static List<Block> withoutRemarks(MadeNow now) {
        return new MadeReport(now).blocks();
    }

    private List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(paid()));
        addBroken(blocks);
        addLines(blocks);
        var full = now.fullCost();
        if (full != null) {
            blocks.addAll(FullCostTable.of(full, currency.strip()));
        }
        addDifferences(blocks);
        addHoldings(blocks);
        return blocks;
    }

    private static void addIf(List<Block> blocks, String before, List<String> names, String after) {
        if (!names.isEmpty()) {
            blocks.add(new Paragraph(before + String.join(", ", names) + after));
        }
    }

    private static String perLb(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String spent() {
        var sold = Figures.cash(made.cost().soldBatch()) + currency;
        return made.unsold().isEmpty()
                ? "As made, " + now.batch() + " cost " + sold + ", "
                        + perLb(made.cost().soldPerKg()) + currency + "/lb. Ingredients only. "
                : "What " + now.batch() + " cost as made is not known: nobody sells " + String.join(", ", made.unsold())
                        + ". All the rest costs " + sold + ". ";
    }

    private String paid() {
        var paid = spent();
        var cheapest = made.cheapest();
        if (cheapest == null) {
            return paid + "There is nothing to compare it with: " + now.noCheapest() + ".";
        }
        var change = cheapest.changePerKg();
        var best = "The cheapest blend that keeps every bound costs " + perLb(cheapest.perKg()) + currency + "/lb";
        if (change == null) {
            return paid + best + ".";
        }
        return paid
                + (change.signum() == 0
                        ? best + ", the same."
                        : best + ", " + perLb(change.abs()) + (change.signum() < 0 ? " less." : " more."));
    }

    private void addBroken(List<Block> blocks) {
        if (now.broken().isEmpty() && now.rulesBroken().isEmpty()) {
            blocks.add(new Paragraph(
                    now.kept() == 1
                            ? "It keeps the one bound that could be measured."
                            : "It keeps all " + now.kept() + " bounds that could be measured."));
        } else {
            blocks.add(new Heading("What it breaks"));
            var points = new ArrayList<String>();
            now.broken().forEach(broken -> points.add(words(broken)));
            now.rulesBroken().forEach(rule -> points.add("It " + rule + "."));
            blocks.add(new Points(points));
            blocks.add(new Paragraph("It keeps " + now.kept() + " other bound" + (now.kept() == 1 ? "." : "s.")));
        }
        addIf(blocks, "Not known, since something in it does not state what they measure: ", now.unknown(), ".");
    }

    private static String words(Broken broken) {
        var off = broken.value().subtract(broken.limit()).abs();
        int digits = Figures.digitsApart(broken.value(), broken.limit(), DIGITS);
        return broken.title() + ": " + Figures.significant(broken.value(), digits) + ", "
                + (broken.least() ? "at least " : "at most ") + Figures.exactly(broken.limit(), broken.unit())
                + " is asked: " + Figures.significant(off, 3) + (broken.least() ? " too little." : " too much.");
    }

    private void addLines(List<Block> blocks) {
        blocks.add(new Heading("What goes in: " + now.batch() + ", stage by stage"));
        var rows = new ArrayList<List<String>>();
        var stage = "";
        for (var line : now.lines()) {
            rows.add(row(line, line.stage().equals(stage) ? "" : line.stage()));
            stage = line.stage();
        }
        blocks.add(new Table(
                List.of(
                        new Column("Stage", false),
                        new Column("Ingredient", false),
                        new Column("Supplier", false),
                        new Column("Grams", true),
                        new Column("Share %", true),
                        new Column("Cost %", true)),
                rows));
        blocks.add(new Paragraph("Where the formula names no supplier, the cheapest offer counts."));
    }

    private static List<String> row(Named line, String stage) {
        return List.of(
                stage,
                line.name(),
                line.supplier(),
                Figures.grams(line.kilograms()),
                Figures.percent(line.share()),
                line.costShare() == null ? "" : Figures.percent(line.costShare()));
    }

    private void addDifferences(List<Block> blocks) {
        if (now.differences().isEmpty()) {
            return;
        }
        blocks.add(new Heading("Where the distance to the cheapest comes from"));
        var rows = new ArrayList<List<String>>();
        now.differences().stream().limit(ROWS).map(MadeReport::row).forEach(rows::add);
        var rest = now.differences().stream().skip(ROWS).toList();
        if (!rest.isEmpty()) {
            rows.add(List.of(rest.size() + " others", "", "", sum(rest)));
        }
        rows.add(List.of("all", "", "", sum(now.differences())));
        blocks.add(new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("g as made", true),
                        new Column("g cheapest", true),
                        new Column("cost /lb", true)),
                rows));
    }

    private static String sum(List<Difference> some) {
        boolean known = some.stream().allMatch(each -> each.costPerKg() != null);
        return known
                ? signed(some.stream()
                        .map(Difference::costPerKg)
                        .filter(Objects::nonNull)
                        .reduce(BigFraction.ZERO, BigFraction::add))
                : signed(null);
    }

    /** Money more or less; what is not known has words instead. */
    private static String signed(@Nullable BigFraction perKg) {
        if (perKg == null) {
            return "not known";
        }
        return (perKg.signum() > 0 ? "+" : "") + perLb(perKg);
    }

    private static List<String> row(Difference each) {
        return List.of(
                each.name(),
                Figures.grams(each.grams().divide(1000)),
                Figures.grams(each.cheapestGrams().divide(1000)),
                signed(each.costPerKg()));
    }

    private void addHoldings(List<Block> blocks) {
        var rows = made.properties().stream()
                .filter(each -> each.value() != null)
                .map(each -> List.of(
                        each.title(), Figures.significant(Objects.requireNonNull(each.value()), DIGITS), each.unit()))
                .toList();
        if (!rows.isEmpty()) {
            blocks.add(new Heading("What it holds"));
            blocks.add(new Table(
                    List.of(new Column("Property", false), new Column("value", true), new Column("unit", false)),
                    rows));
        }
    }
}
