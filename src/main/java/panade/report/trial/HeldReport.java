package panade.report.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.trial.HeldResult;
import panade.result.trial.HeldResult.HeldBound;

/** Words how often a sure blend kept its bounds. */
public final class HeldReport {
    private final HeldResult result;

    private HeldReport(HeldResult result) {
        this.result = result;
    }

    /** The report. */
    public static ReportDocument of(HeldResult result) {
        var title = result.title() + ": what it holds drawn " + result.draws() + " times, seed " + result.seed();
        return Remarks.on(new ReportDocument(title, new HeldReport(result).blocks()), result.remarks());
    }

    private List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph("The blend is kept, and measured again with what its ingredients hold in each draw: "
                + result.values() + " values that state a spread, each on its own."));
        addTable("Bounds that are to be sure", rows(true), true, blocks);
        addTable("Bounds that take contents as stated and were broken", rows(false), false, blocks);
        blocks.add(new Paragraph(
                "Every bound was kept in " + Figures.percentOf(result.all(), result.draws()) + " % of the draws."));
        if (!result.notDrawn().isEmpty()) {
            blocks.add(new Paragraph("What trials taught is not known well enough to be drawn: "
                    + String.join(", ", result.notDrawn()) + "."));
        }
        blocks.add(new Paragraph("Prices are not drawn beside bounds that are to be sure."));
        return blocks;
    }

    private static void addTable(String heading, List<List<String>> rows, boolean asked, List<Block> blocks) {
        if (rows.isEmpty()) {
            return;
        }
        var columns = new ArrayList<>(List.of(new Column("Bound", false), new Column("kept in", true)));
        if (asked) {
            columns.add(new Column("asked", true));
        }
        blocks.add(new Heading(heading));
        blocks.add(new Table(columns, rows));
    }

    private List<List<String>> rows(boolean sure) {
        return result.bounds().stream()
                .filter(bound -> (bound.sure() != null) == sure)
                .filter(bound -> sure || bound.held() < result.draws())
                .sorted(Comparator.comparing(bound -> sure ? 0 : bound.held()))
                .map(this::row)
                .toList();
    }

    private List<String> row(HeldBound bound) {
        var sure = bound.sure();
        var kept = Figures.percentOf(bound.held(), result.draws()) + " %";
        return sure == null
                ? List.of(bound.name(), kept)
                : List.of(bound.name(), kept, Figures.significant(sure.multiply(100), 4) + " %");
    }
}
