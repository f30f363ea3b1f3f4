package panade.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.cost.FullCost;
import panade.cost.OptionalSections;
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
    public static ReportDocument of(Blended outcome, OptionalSections asides) {
        return new BlendReport(outcome).document(asides);
    }

    private ReportDocument document(OptionalSections asides) {
        var blocks = new ArrayList<Block>();
        var words = new VerdictWords(outcome);
        blocks.add(new Paragraph(words.verdict()));
        blocks.add(new Paragraph(words.proof()));
        var choice = outcome.choice();
        if (choice != null) {
            blocks.add(new Paragraph(ChoiceWords.of(choice, blend.costPerKg())));
        }
        var label = asides.label();
        if (label != null) {
            blocks.add(new Paragraph(words.label(label)));
        }
        blocks.add(new Heading("What goes in: " + brief.batch().text() + " batch, stage by stage"));
        blocks.add(new Table(lineColumns(), lineRows()));
        if (FullCost.isStated(brief)) {
            blocks.addAll(FullCostTable.of(FullCost.of(brief, blend), brief, asides.breakEven()));
        }
        var binding = new BindingWords(outcome).points(explanation.limits());
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
        return Remarks.under(
                new ReportDocument(brief.title(), blocks), outcome.asked().remarks());
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
