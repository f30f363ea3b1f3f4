package panade.workbook;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;
import panade.result.BatchResult;
import panade.result.BatchResult.Line;
import panade.result.BatchResult.Stage;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;
import panade.sheet.Cell.Remark;
import panade.sheet.Place;
import panade.sheet.SheetDraft;

/** The bench sheet as a spreadsheet: room for what was really weighed, and how far that is off. */
public final class BatchWorkbook {
    private static final int WEIGH = 2;
    private static final int WEIGHED = 3;
    private static final int LOWEST = 5;
    private static final int HIGHEST = 6;
    private static final int PLACES = 3;

    private final BatchResult.Sheet sheet;
    private final SheetDraft draft = new SheetDraft("Weigh", 20, 36, 12, 12, 12, 12, 12, 24, 20);
    private final List<Integer> totals = new ArrayList<>();

    private BatchWorkbook(BatchResult.Sheet sheet) {
        this.sheet = sheet;
    }

    /** The book. */
    public static Book of(BatchResult result) {
        var sheets = new ArrayList<>(new BatchWorkbook(result.sheet()).book().sheets());
        var trial = result.trial();
        if (trial != null) {
            sheets.addAll(TrialSheets.of(result.sheet(), trial));
        }
        return new Book(sheets);
    }

    private Book book() {
        draft.title(sheet.title() + ": " + sheet.batch() + " to weigh");
        draft.say(
                sheet.met()
                        ? "Weighed like this, every bound is met. Least and most are for that weight alone."
                        : sheet.isNear()
                                ? "On this scale a fixed number is missed: see what panade batch says of it."
                                : "On this scale no weights were found that meet every bound. Do not weigh by this"
                                        + " sheet.");
        if (sheet.endedEarly() && !sheet.met()) {
            draft.say("The search for weights ended before it was done: weights that meet every bound may exist.");
        }
        draft.say("Type what you weighed into the shaded cells, in grams.");
        draft.head("Stage", "Ingredient", "Weigh, g", "Weighed, g", "Off, g", "Least, g", "Most, g", "", "Lot");
        sheet.stages().forEach(this::stage);
        draft.add(
                new Cell.Text("All", Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                all(WEIGH, sheet.total()),
                all(WEIGHED, BigFraction.ZERO));
        return new Book(List.of(draft.finish()));
    }

    private Cell all(int column, BigFraction value) {
        var parts = totals.stream().map(row -> Place.of(column, row)).toList();
        return Cell.total(parts.isEmpty() ? "0" : String.join("+", parts), value, Form.VALUE);
    }

    private void stage(Stage stage) {
        int first = draft.next();
        stage.lines().forEach(line -> line(stage, line));
        int last = draft.next() - 1;
        totals.add(draft.add(
                new Cell.Text(stage.title(), Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                Cell.total(Place.sum(WEIGH, first, last), stage.total(), Form.VALUE),
                Cell.total(Place.sum(WEIGHED, first, last), BigFraction.ZERO, Form.VALUE)));
    }

    /** Grams, to a thousandth on the side on which no bound breaks. */
    private static Cell limit(BigFraction grams, RoundingMode safe) {
        return Cell.figure(Decimal.of(grams.bigDecimalValue(PLACES, safe)), Form.VALUE);
    }

    private void line(Stage stage, Line line) {
        int row = draft.next();
        var weighed = Place.of(WEIGHED, row);
        var most = line.highest();
        draft.add(
                Cell.text(stage.title()),
                Cell.text(line.name()),
                Cell.figure(line.grams(), Form.VALUE),
                new Cell.Text("", Look.INPUT),
                new Remark(
                        "IF(" + weighed + "=\"\",\"\"," + weighed + "-" + Place.of(WEIGH, row) + ")", "", Look.PLAIN),
                limit(line.lowest(), RoundingMode.CEILING),
                most == null ? Cell.text("any") : limit(most, RoundingMode.FLOOR),
                new Remark(verdict(weighed, row), "", Look.PLAIN),
                new Cell.Text("", Look.INPUT));
    }

    private static String verdict(String weighed, int row) {
        var least = Place.of(LOWEST, row);
        var most = Place.of(HIGHEST, row);
        return "IF(" + weighed + "=\"\",\"\",IF(" + weighed + "<" + least + ",\"too little\",IF(" + most
                + "=\"any\",\"\",IF(" + weighed + ">" + most + ",\"too much\",\"\"))))";
    }
}
