package panade.report.plate;

import java.util.ArrayList;
import java.util.List;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.result.BatchResult.Blank;
import panade.result.BatchResult.Trial;

/** Words what is written down when a trial is made: one line for each measure, with room for each figure. */
public final class TrialBlanks {
    private TrialBlanks() {}

    /** The form of a trial. */
    public static List<Block> of(Trial trial) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("Trial " + trial.id() + ": what to write down"));
        blocks.add(new Paragraph("Who tastes is told nothing but the code " + trial.code()
                + ". If you weigh anything else than above, write down what you weighed."));
        blocks.add(new Table(
                List.of(
                        new Column("Measure", false),
                        new Column("in", false),
                        new Column("by", false),
                        new Column("Figure", false)),
                trial.blanks().stream().map(TrialBlanks::row).toList()));
        if (!trial.settings().isEmpty()) {
            blocks.add(new Paragraph("Settings, for \"process\" in the document of trials: "
                    + String.join(
                            ", ",
                            trial.settings().stream()
                                    .map(setting -> setting + " " + SheetReport.WRITE_HERE)
                                    .toList())
                    + "."));
        }
        return blocks;
    }

    private static List<String> row(Blank blank) {
        return List.of(
                blank.response(),
                blank.scale().isEmpty() ? blank.unit() : blank.scale(),
                blank.by(),
                SheetReport.WRITE_HERE);
    }
}
