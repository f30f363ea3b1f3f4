package panade.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.explain.Explanation;
import panade.plan.Outcome.Blended;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.study.Asides;
import panade.study.FullCost;
import panade.study.LabelPrice;

/** Words the least-cost blend and its reasons. */
public final class BlendReport {
    private final Blended outcome;
    private final Brief brief;
    private final Blend blend;
    private final Explanation explanation;
    private final BigFraction batchKg;

    private BlendReport(Blended outcome) {
        this.outcome = outcome;
        this.brief = outcome.brief();
        this.blend = outcome.blend();
        this.explanation = outcome.explanation();
        this.batchKg = brief.batch().base();
    }

    /** The report on a blend, with what was asked for beside it. */
    public static ReportDocument of(Blended outcome, Asides asides) {
        return new BlendReport(outcome).document(asides);
    }

    private ReportDocument document(Asides asides) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph(proof()));
        var choice = outcome.choice();
        if (choice != null) {
            blocks.add(new Paragraph(ChoiceWords.of(choice, blend.costPerKg())));
        }
        var label = asides.label();
        if (label != null) {
            blocks.add(new Paragraph(words(label)));
        }
        blocks.add(new Heading("What goes in: " + brief.batch().text() + " batch, stage by stage"));
        blocks.add(new Table(lineColumns(), lineRows()));
        if (FullCost.isStated(brief)) {
            blocks.addAll(FullCostTable.of(FullCost.of(brief, blend), brief, asides.breakEven()));
        }
        var binding = new BindingWords(money()).points(explanation.limits());
        blocks.add(new Heading("What holds the cost up"));
        blocks.add(binding.isEmpty() ? new Paragraph("No bound binds.") : new Points(binding));
        blocks.addAll(LimitTable.of(explanation.limits()));
        blocks.addAll(RoomTable.of(outcome));
        blocks.addAll(UnusedTable.of(brief, explanation.unused()));
        blocks.addAll(HoldingsTable.of(explanation.properties()));
        var ladder = asides.ladder();
        if (ladder != null) {
            blocks.addAll(LadderTable.of(ladder));
        }
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(Cautions.of(brief, blend)));
        return new ReportDocument(brief.title(), blocks);
    }

    private String words(LabelPrice label) {
        var free = spaced(Figures.money(Figures.perPound(label.freePerKg()))) + "/lb";
        return label.extraPerKg().signum() == 0
                ? "It keeps the printed label, which costs nothing: no blend under another is cheaper."
                : "It keeps the printed label, which costs "
                        + spaced(Figures.money(Figures.perPound(label.extraPerKg())))
                        + "/lb: under any other label the cheapest blend costs " + free + " (proved as well).";
    }

    private String money() {
        return brief.currency();
    }

    private String verdict() {
        var perKg = blend.costPerKg();
        boolean cooked = brief.practice().perCooked();
        var words = "Cheapest blend: " + spaced(Figures.money(Figures.perPound(perKg)))
                + (cooked ? " per cooked lb, " : "/lb, ") + spaced(Figures.money(perKg))
                + (cooked ? " per cooked kg" : "/kg") + "; the " + brief.batch().text() + " batch costs "
                + spaced(Figures.cash(blend.rawCostPerKg().multiply(batchKg))) + ". Ingredients only.";
        var target = brief.target();
        if (target == null) {
            return words;
        }
        var spare = Figures.perPound(target.perKg().subtract(perKg));
        var distance = spaced(Figures.money(spare.abs())) + "/lb";
        return words + " Target " + target.text() + ": "
                + (spare.signum() >= 0 ? "met, with " + distance + " to spare." : "missed by " + distance + ".");
    }

    private String spaced(String figure) {
        return money().isEmpty() ? figure : figure + " " + money();
    }

    private String proof() {
        var choice = outcome.choice() == null ? "" : "with this choice of ingredients, ";
        var words = "Proved: " + choice
                + "no blend that keeps every bound costs less (checked in exact fractions; found by "
                + outcome.proof().engine() + ").";
        return explanation.unique() ? words : words + " Other blends cost exactly the same: compare costs, not shares.";
    }

    private static List<Column> lineColumns() {
        return List.of(
                new Column("Stage", false),
                new Column("Ingredient", false),
                new Column("Supplier", false),
                new Column("Grams", true),
                new Column("Share %", true),
                new Column("Cost %", true));
    }

    private List<List<String>> lineRows() {
        var rows = new ArrayList<List<String>>();
        var stage = "";
        for (var line : blend.lines()) {
            var title = stageTitle(line.use().stage());
            rows.add(List.of(
                    title.equals(stage) ? "" : title,
                    brief.set().ingredient(line.use().ingredient()).name(),
                    line.offer().supplier(),
                    Figures.grams(line.share().multiply(batchKg)),
                    Figures.percent(line.share()),
                    Figures.percent(costShare(line))));
            stage = title;
        }
        return rows;
    }

    private BigFraction costShare(Blend.Line line) {
        var total = blend.rawCostPerKg();
        return total.signum() == 0 ? BigFraction.ZERO : line.costPerKg().divide(total);
    }

    private String stageTitle(String id) {
        return brief.stages().stream()
                .filter(stage -> stage.id().equals(id))
                .map(Stage::title)
                .findFirst()
                .orElse(id);
    }
}
