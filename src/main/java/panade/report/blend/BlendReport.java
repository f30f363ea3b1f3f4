package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Cautions;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.BlendResult;

/** Words the least-cost blend and its reasons. */
public final class BlendReport {
    private final BlendResult result;
    private final boolean all;

    private BlendReport(BlendResult result, boolean all) {
        this.result = result;
        this.all = all;
    }

    /** The report on a blend, with what was asked for beside it. */
    public static ReportDocument of(BlendResult result) {
        return of(result, false);
    }

    /**
     * The same.
     *
     * @param all whether to list every unused ingredient, not only those that are nearest to coming in
     */
    public static ReportDocument of(BlendResult result, boolean all) {
        return new BlendReport(result, all).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        var words = new VerdictWords(result);
        blocks.add(new Paragraph(words.verdict()));
        words.reasons().forEach(sentence -> blocks.add(new Paragraph(sentence)));
        blocks.add(new Heading("What goes in: " + result.brief().batch() + " batch, stage by stage"));
        blocks.add(new Table(lineColumns(), lineRows()));
        var full = result.fullCost();
        if (full != null) {
            blocks.addAll(FullCostTable.of(full, result.brief().currency()));
        }
        var binding = new BindingWords(result.brief().currency())
                .points(result.bounds().get());
        blocks.add(new Heading("What holds the cost up"));
        blocks.add(binding.isEmpty() ? new Paragraph("No bound binds.") : new Points(binding));
        blocks.addAll(LimitTable.of(result.bounds().get()));
        if (SureTable.isAbout(result)) {
            blocks.addAll(SureTable.of(result));
        } else {
            blocks.addAll(RoomTable.of(result));
            blocks.addAll(
                    all
                            ? UnusedTable.of(result.unused().get())
                            : UnusedTable.of(result.nearest().get()));
        }
        blocks.addAll(HoldingsTable.of(result.properties()));
        var ladder = result.ladder();
        if (ladder != null) {
            blocks.addAll(LadderTable.of(ladder));
        }
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(cautions(result)));
        return Remarks.on(
                new ReportDocument(result.brief().title(), blocks),
                Objects.requireNonNullElse(result.remarks(), List.of()));
    }

    /** What to mind about the blend. */
    public static List<String> cautions(BlendResult result) {
        return Cautions.of(
                result.brief().notes(),
                result.allergens().stated(),
                result.allergens().unknownFor());
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
        for (var line : result.blend()) {
            rows.add(List.of(
                    line.stageTitle().equals(stage) ? "" : line.stageTitle(),
                    line.name(),
                    line.supplier(),
                    Figures.grams(line.kilograms()),
                    Figures.percent(line.share()),
                    Figures.percent(line.costShare())));
            stage = line.stageTitle();
        }
        return rows;
    }
}
