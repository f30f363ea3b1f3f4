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
    /** So many of the bounds that hold the cost up are read; there may be thirty. */
    private static final int DEAREST = 5;

    private final BlendResult result;
    private final boolean all;

    private BlendReport(BlendResult result, boolean all) {
        this.result = result;
        this.all = all;
    }

    /**
     * The report on a blend, with what was asked for beside it.
     *
     * @param all whether to tell all that is known, or what is looked at first and how much there is beside
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
        blocks.add(new Heading("What holds the cost up"));
        blocks.addAll(all ? wholly() : briefly());
        var ladder = result.ladder();
        if (ladder != null) {
            blocks.addAll(LadderTable.of(ladder));
        }
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(cautions(result)));
        if (!all) {
            blocks.add(new Paragraph("With --all: each bound, how far each ingredient may move, what is not used and at"
                    + " which price it would be, and what the blend holds."));
        }
        return Remarks.on(
                new ReportDocument(result.brief().title(), blocks),
                Objects.requireNonNullElse(result.remarks(), List.of()));
    }

    private List<Block> wholly() {
        var bounds = result.bounds().get();
        var blocks = new ArrayList<Block>(List.of(points(words().points(bounds))));
        blocks.addAll(LimitTable.of(bounds));
        if (SureTable.isAbout(result)) {
            blocks.addAll(SureTable.of(result));
        } else {
            blocks.addAll(RoomTable.of(result));
            blocks.addAll(UnusedTable.of(result.unused().get()));
        }
        blocks.addAll(HoldingsTable.of(result.properties()));
        return blocks;
    }

    private List<Block> briefly() {
        var bounds = result.bounds().get();
        long idle = bounds.stream().filter(bound -> bound.binding() == null).count();
        var blocks = new ArrayList<Block>(List.of(points(words().dearest(bounds, DEAREST))));
        if (idle > 0) {
            blocks.add(new Paragraph(
                    "It keeps " + idle + (idle == 1 ? " other bound" : " other bounds") + " with room to spare."));
        }
        blocks.addAll(
                SureTable.isAbout(result)
                        ? SureTable.of(result)
                        : UnusedTable.nearest(
                                result.nearest().get(), result.brief().currency()));
        return blocks;
    }

    private BindingWords words() {
        return new BindingWords(result.brief().currency());
    }

    private static Block points(List<String> points) {
        return points.isEmpty() ? new Paragraph("No bound binds.") : new Points(points);
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
