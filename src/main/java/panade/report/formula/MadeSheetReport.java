package panade.report.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.report.plate.SheetReport;
import panade.report.plate.TrialBlanks;
import panade.result.BatchResult.Fail;
import panade.result.BatchResult.Line;
import panade.result.BatchResult.Sheet;
import panade.result.formula.MadeBatchResult;
import panade.result.formula.MadeBatchResult.Moved;

/** Words what to weigh for a formula, and where that is not what it asks. */
public final class MadeSheetReport {
    private static final BigFraction GRAMS = BigFraction.of(1000);
    private static final int PERCENT = 100;

    private final MadeBatchResult result;
    private final Sheet sheet;

    private MadeSheetReport(MadeBatchResult result) {
        this.result = result;
        this.sheet = result.sheet();
    }

    /** The sheet. */
    public static ReportDocument of(MadeBatchResult result) {
        return new MadeSheetReport(result).document();
    }

    /** The sheet without its title and its remarks. */
    public static List<Block> bare(MadeBatchResult result) {
        return new MadeSheetReport(result).blocks();
    }

    private ReportDocument document() {
        return Remarks.on(
                new ReportDocument(result.title() + ": " + sheet.batch() + " to weigh", blocks()), result.remarks());
    }

    private List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(SheetReport.toFillIn());
        blocks.add(new Paragraph("As it is made, scaled to " + sheet.batch() + "; " + paid() + "."));
        addBroken(blocks);
        addMoved(blocks);
        blocks.addAll(SheetReport.work(sheet));
        var trial = result.trial();
        if (trial != null) {
            blocks.addAll(TrialBlanks.of(trial));
        }
        return blocks;
    }

    private String paid() {
        return result.unsold().isEmpty()
                ? SheetReport.cost(sheet)
                : "what it costs is not known, since nobody sells " + String.join(", ", result.unsold());
    }

    private void addBroken(List<Block> blocks) {
        var own = sheet.fails().stream()
                .filter(fail -> result.brokenAsMade().contains(fail.path()))
                .toList();
        if (sheet.fails().isEmpty()) {
            blocks.add(new Paragraph(
                    "Weighed like this, every bound that could be measured is met (checked in exact fractions)."));
        }
        add(blocks, "The formula itself breaks, on any scale:", own);
        if (!result.broken().isEmpty()) {
            add(blocks, "Weighed like this it also breaks what the formula keeps:", result.broken());
            blocks.add(new Paragraph((sheet.endedEarly() ? "No better weights were found in time. " : "")
                    + "A finer scale (--weighing), a larger batch, or lines that may move further (--move-at-most)"
                    + " may keep it."));
        }
        if (!result.rulesBroken().isEmpty()) {
            blocks.add(new Points(result.rulesBroken().stream()
                    .map(rule -> "It " + rule + ".")
                    .toList()));
        }
    }

    private static void add(List<Block> blocks, String before, List<Fail> fails) {
        if (!fails.isEmpty()) {
            blocks.add(new Paragraph(before));
            blocks.add(new Points(fails.stream().map(SheetReport::words).toList()));
        }
    }

    private void addMoved(List<Block> blocks) {
        var most = result.moveAtMost();
        var cap = most == null ? "the next step of the scale" : most + ", or the next step of the scale";
        if (result.moved().isEmpty()) {
            blocks.add(
                    new Paragraph("Every line is weighed in the step nearest to what the formula asks." + furthest()));
            return;
        }
        var plain = sheet.plainFails().stream()
                .filter(fail -> !result.brokenAsMade().contains(fail.path()))
                .map(Fail::name)
                .toList();
        blocks.add(new Paragraph((plain.isEmpty()
                        ? ""
                        : "Each weight rounded on its own would break: " + String.join(", ", plain) + ". ")
                + "These lines are moved, by " + cap + " at most:"));
        blocks.add(new Table(
                List.of(
                        new Column("Moved", false),
                        new Column("Stage", false),
                        new Column("g asked", true),
                        new Column("nearest", true),
                        new Column("to weigh", true),
                        new Column("off", true)),
                result.moved().stream().map(MadeSheetReport::row).toList()));
        blocks.add(new Paragraph("All others are weighed in the nearest step." + furthest()));
    }

    private static List<String> row(Moved moved) {
        return List.of(
                moved.name(),
                moved.place(),
                grams(moved.exact()),
                grams(moved.plain()),
                grams(moved.grams()),
                part(moved.grams().subtract(moved.exact()).divide(moved.exact())));
    }

    private static String grams(BigFraction grams) {
        return Figures.grams(grams.divide(GRAMS));
    }

    private static String part(BigFraction off) {
        return (off.signum() < 0 ? "-" : "+") + Figures.significant(off.abs().multiply(PERCENT), 2) + " %";
    }

    /** The line that is furthest from the formula; nothing where all are as it asks. */
    private String furthest() {
        return sheet.lines().stream()
                .max(Comparator.comparing((Line line) -> line.off().abs()))
                .filter(line -> line.off().signum() != 0)
                .map(line -> " Furthest from the formula is " + line.name() + ", by " + part(line.off()) + ".")
                .orElse(" All are as the formula asks.");
    }
}
