package panade.workbook;

import java.util.List;
import panade.result.BatchResult;
import panade.result.BatchResult.Line;
import panade.result.BatchResult.Trial;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** The sheets that are filled in when a trial is made, and read again as they are; names are those of documents. */
final class TrialSheets {
    private static final Cell OPEN = new Cell.Text("", Look.INPUT);
    private static final Cell TYPED = new Cell.Text("", Look.TYPED);

    private TrialSheets() {}

    static List<Sheet> of(BatchResult.Sheet sheet, Trial trial) {
        return List.of(weighed(sheet, trial), measured(trial));
    }

    private static Sheet weighed(BatchResult.Sheet sheet, Trial trial) {
        var draft = new SheetDraft("Weighed", 10, 12, 12, 14, 28, 12, 12, 8, 24);
        draft.head("trial", "block", "date", "stage", "ingredient", "plan", "amount", "unit", "note");
        sheet.stages().stream().flatMap(stage -> stage.lines().stream()).forEach(line -> draft.add(row(line, trial)));
        return draft.finish();
    }

    private static List<Cell> row(Line line, Trial trial) {
        return List.of(
                Cell.text(trial.id()),
                TYPED,
                TYPED,
                Cell.text(line.stage()),
                Cell.text(line.ingredient()),
                Cell.figure(line.grams(), Form.VALUE),
                OPEN,
                Cell.text("g"),
                OPEN);
    }

    private static Sheet measured(Trial trial) {
        var draft = new SheetDraft("Measured", 10, 24, 12, 12, 8, 24);
        draft.head("trial", "response", "by", "value", "unit", "note");
        trial.blanks()
                .forEach(blank -> draft.add(
                        Cell.text(trial.id()),
                        Cell.text(blank.response()),
                        Cell.text(blank.by()),
                        OPEN,
                        Cell.text(blank.unit()),
                        Cell.text(blank.scale())));
        return draft.finish();
    }
}
