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
import panade.report.question.LabelWords;
import panade.result.formula.MadeResult.Cheapest;
import panade.result.formula.NudgeResult;
import panade.result.formula.NudgeResult.Amount;
import panade.result.formula.NudgeResult.Few;
import panade.result.formula.NudgeResult.Point;

/** Words which few changes of a formula are worth it. */
public final class NudgeReport {
    /** Rows of the path that are shown; the result for machines has them all. */
    private static final int ROWS = 12;

    private final NudgeResult nudge;
    private final String currency;
    private final BigFraction made;
    private final Cheapest cheapest;

    private NudgeReport(NudgeResult nudge) {
        this.nudge = nudge;
        var code = nudge.from().cost().currency();
        this.currency = code == null ? "" : " " + code;
        this.made = nudge.from().cost().soldPerKg();
        this.cheapest = Objects.requireNonNull(nudge.from().cheapest());
    }

    /** The report. */
    public static ReportDocument of(NudgeResult nudge) {
        return new NudgeReport(nudge).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(now()));
        if (!nudge.broken().isEmpty()) {
            blocks.add(new Paragraph("It breaks: " + String.join("; ", nudge.broken()) + "."));
        }
        if (!nudge.otherFaults().isEmpty()) {
            blocks.add(new Paragraph("It " + String.join("; it ", nudge.otherFaults()) + "."));
        }
        if (!nudge.from().unsold().isEmpty()) {
            blocks.add(new Paragraph(
                    "Nobody sells " + String.join(", ", nudge.from().unsold())
                            + ": that is counted as costing nothing in what is paid now."));
        }
        if (!nudge.homeless().isEmpty()) {
            blocks.add(new Paragraph("Must go, since it cannot be bought or has no place in the brief: "
                    + String.join(", ", nudge.homeless()) + "."));
        }
        if (!nudge.kept().isEmpty()) {
            blocks.add(new Paragraph("Kept as made: " + String.join(", ", nudge.kept()) + "."));
        }
        if (nudge.boughtCheapest().compareTo(made) < 0) {
            blocks.add(
                    new Paragraph("The same bought from the cheapest costs " + perLb(nudge.boughtCheapest()) + currency
                            + "/lb, " + perLb(made.subtract(nudge.boughtCheapest()))
                            + " less. All that follows is bought from the cheapest."));
        }
        addFew(blocks);
        addPath(blocks);
        return Remarks.on(new ReportDocument(nudge.title(), blocks), nudge.remarks());
    }

    private String now() {
        var change = cheapest.perKg().subtract(made);
        var paid = "As made, " + nudge.batch() + " cost "
                + Figures.cash(nudge.from().cost().soldBatch()) + currency + ", " + perLb(made) + currency + "/lb. ";
        var best = "The cheapest blend of all" + (nudge.kept().isEmpty() ? "" : " that keeps them") + " costs "
                + perLb(cheapest.perKg()) + currency + "/lb";
        if (change.signum() == 0) {
            return paid
                    + (nudge.broken().isEmpty()
                            ? "No blend that keeps every bound costs less: nothing is to be gained."
                            : best + ".");
        }
        return paid + best + ", " + perLb(change.abs()) + (change.signum() < 0 ? " less." : " more.");
    }

    private void addFew(List<Block> blocks) {
        blocks.add(new Heading("The best with few ingredients changed, all others as made"));
        var known = nudge.few().stream().filter(few -> few.costPerKg() != null).toList();
        nudge.few().stream()
                .filter(few -> few.costPerKg() == null)
                .forEach(few -> blocks.add(new Paragraph(none(few))));
        BigFraction before = null;
        for (var few : known) {
            addFew(blocks, few, before);
            before = few.costPerKg();
        }
        blocks.add(new Paragraph(
                "The batch keeps its weight, so what makes up for a change counts as a change too. Each is proved in"
                        + " exact fractions where nothing else is said."));
    }

    private static String none(Few few) {
        var words = few.changes() == 1 ? "1 ingredient changed" : "At most " + few.changes() + " changed";
        return few.undecided() == null
                ? words + ": no blend keeps every bound."
                : words + ": not decided, " + few.undecided() + ".";
    }

    private void addFew(List<Block> blocks, Few few, @Nullable BigFraction before) {
        var cost = Objects.requireNonNull(few.costPerKg());
        if (few.changed().isEmpty()) {
            blocks.add(new Paragraph((few.changes() == 1 ? "1 changed: " : "At most " + few.changes() + " changed: ")
                    + "nothing costs less than "
                    + (nudge.boughtCheapest().compareTo(made) < 0
                            ? "the same bought from the cheapest."
                            : "what is made.")));
            return;
        }
        if (before != null && cost.compareTo(before) >= 0) {
            blocks.add(new Paragraph("At most " + few.changes() + " changed: saves nothing more."));
            return;
        }
        blocks.add(new Paragraph(
                few.changed().size() + " changed: " + perLb(cost) + currency + "/lb, " + saving(cost) + "."));
        var lines = new ArrayList<String>();
        few.amounts().forEach(amount -> lines.add(amount(amount)));
        if (!few.mended().isEmpty()) {
            lines.add("Mends: " + String.join("; ", few.mended()) + ".");
        }
        if (!few.binding().isEmpty()) {
            lines.add("Now at its limit, or within half a per cent of it: " + String.join("; ", few.binding()) + ".");
        }
        lines.add("Label: " + LabelWords.all(Objects.requireNonNull(few.label())) + ".");
        cautions(few, lines);
        blocks.add(new Points(lines));
    }

    private void cautions(Few few, List<String> lines) {
        var least = Objects.requireNonNull(few.leastPerKg());
        var cost = Objects.requireNonNull(few.costPerKg());
        if (!few.weighed()) {
            lines.add(
                    "These weights are exact: in whole steps of the scale no blend was found that keeps every bound.");
        }
        if (!few.proved()) {
            lines.add("Not proved to be the best: none with so few changes costs less than " + perLb(least) + currency
                    + "/lb.");
        } else if (few.weighed() && cost.compareTo(least) > 0 && !perLb(cost).equals(perLb(least))) {
            lines.add("In whole steps of the scale; at any weights it could be " + perLb(least) + currency + "/lb.");
        }
    }

    private String saving(BigFraction cost) {
        var saved = made.subtract(cost);
        var whole = made.subtract(cheapest.perKg());
        if (saved.signum() <= 0) {
            return perLb(saved.abs()) + " more than now";
        }
        return perLb(saved) + " less than now, "
                + Figures.tenth(saved.multiply(100).divide(whole)) + " % of all that can be saved";
    }

    private static String amount(Amount amount) {
        return Figures.grams(amount.change().abs()) + " g " + (amount.change().signum() > 0 ? "more " : "less ")
                + amount.name() + " in the " + amount.stage();
    }

    private void addPath(List<Block> blocks) {
        blocks.add(new Heading("The least cost as more and more of the batch is moved"));
        var points = nudge.path();
        var first = points.get(0);
        if (!first.met()) {
            var mended = points.get(1);
            var more = mended.costPerKg().subtract(made);
            blocks.add(new Paragraph("To keep every bound, " + grams(mended) + " g must be moved at least; that costs "
                    + perLb(more.abs()) + currency + "/lb " + (more.signum() < 0 ? "less" : "more") + " than now."));
        }
        var shown = shown(points);
        blocks.add(new Table(
                List.of(
                        new Column("moved g", true),
                        new Column("moved %", true),
                        new Column("cost /lb", true),
                        new Column("change", true),
                        new Column("", false)),
                shown.stream().map(this::row).toList()));
        blocks.add(new Paragraph(pathWords(points.size(), shown.size())));
    }

    private String pathWords(int all, int shown) {
        var words = "Moved: what is taken out in some lines and put in with others. ";
        words += nudge.straight()
                ? "Each place is proved, and between places where the rate changes the cost runs straight."
                : "Each place is proved. The rules leave a choice of ingredients, so between places the cost may lie lower.";
        return shown < all ? words + " " + shown + " of " + all + " places are shown; --json has them all." : words;
    }

    /** Some of the places: the ends, and those between whose costs are spread evenly. */
    private static List<Point> shown(List<Point> points) {
        if (points.size() <= ROWS) {
            return points;
        }
        var shown = new ArrayList<Point>();
        int start = points.get(0).met() ? 0 : 1;
        points.subList(0, start).forEach(shown::add);
        int left = ROWS - start;
        var first = points.get(start).costPerKg();
        var step = points.get(points.size() - 1).costPerKg().subtract(first).divide(left - 1);
        var next = first;
        for (var point : points.subList(start, points.size() - 1)) {
            if (point.costPerKg().compareTo(next) <= 0) {
                shown.add(point);
                while (point.costPerKg().compareTo(next) <= 0) {
                    next = next.add(step);
                }
            }
        }
        shown.add(points.get(points.size() - 1));
        return shown;
    }

    private List<String> row(Point point) {
        var change = point.costPerKg().subtract(made);
        return List.of(
                grams(point),
                Figures.percent(point.moved()),
                perLb(point.costPerKg()),
                (change.signum() > 0 ? "+" : "") + perLb(change),
                point.moved().signum() == 0 ? (point.met() ? "as made" : "as made, breaks the brief") : "");
    }

    private String grams(Point point) {
        return Figures.grams(point.moved().multiply(nudge.kilograms()));
    }

    private static String perLb(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }
}
