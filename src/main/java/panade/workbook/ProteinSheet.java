package panade.workbook;

import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.PanelResult;
import panade.result.PanelResult.Score;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** How good the protein is, and what would have to be known to tell. */
final class ProteinSheet {
    private ProteinSheet() {}

    static Sheet of(List<Score> scores) {
        var sheet = new SheetDraft("Protein", 36, 14, 16, 18, 26, 60);
        sheet.title("Protein quality");
        sheet.say("As panade worked it out; not recalculated. At least: the score if what is not known were none.");
        sheet.head("Score", "Cut at 1", "Before it is cut", "At least", "Limited by", "Compared with");
        scores.forEach(score -> sheet.add(row(score)));
        sheet.add(Cell.BLANK);
        sheet.add(
                Cell.heading("Not known for"),
                Cell.heading("Score"),
                Cell.heading(""),
                Cell.heading(""),
                Cell.heading(""),
                Cell.heading("Values that are missing"));
        scores.forEach(score -> missing(sheet, score));
        return sheet.finish();
    }

    private static List<Cell> row(Score score) {
        return List.of(
                Cell.prose(score.name()),
                known(score.score()),
                known(score.uncut()),
                least(score.atLeast()),
                Cell.prose(Objects.requireNonNullElse(score.limiting(), "")),
                Cell.prose("Pattern for " + score.patternFor() + ": " + score.pattern()));
    }

    private static Cell known(@Nullable BigFraction value) {
        return value == null ? Cell.prose(PanelResult.NOT_KNOWN) : Cell.figure(value, Form.CASH);
    }

    /** At least nothing says nothing. */
    private static Cell least(@Nullable BigFraction value) {
        return value == null || value.signum() == 0 ? Cell.BLANK : Cell.figure(value, Form.CASH);
    }

    private static void missing(SheetDraft sheet, Score score) {
        score.missing()
                .forEach(each -> sheet.add(
                        Cell.prose(each.ingredient()),
                        Cell.prose(score.name()),
                        Cell.BLANK,
                        Cell.BLANK,
                        Cell.BLANK,
                        Cell.prose(String.join(", ", each.values()))));
    }
}
