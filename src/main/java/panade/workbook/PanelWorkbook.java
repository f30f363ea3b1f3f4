package panade.workbook;

import java.util.List;
import java.util.Objects;
import panade.result.PanelResult;
import panade.result.PanelResult.Row;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Formula;
import panade.sheet.Cell.Look;
import panade.sheet.Cell.Remark;
import panade.sheet.Cell.Text;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/**
 * The draft of a label: exact amounts per serving live, beside the texts that panade rounded by the law, which no
 * formula of a spreadsheet rounds again.
 */
public final class PanelWorkbook {
    private static final int HUNDRED = 2;

    private final PanelResult panel;
    private final SheetDraft draft = new SheetDraft("Panel", 30, 8, 16, 18, 2, 18, 18, 18, 40);

    private PanelWorkbook(PanelResult panel) {
        this.panel = panel;
    }

    /** The book. */
    public static Book of(PanelResult panel) {
        return new Book(List.of(
                new PanelWorkbook(panel).rows(),
                LabelSheets.statement(panel),
                LabelSheets.allergens(panel),
                ProteinSheet.of(panel.proteinQuality()),
                LabelSheets.cautions(panel)));
    }

    private Sheet rows() {
        draft.title(panel.title() + ": draft of the label");
        draft.say("DRAFT, not a finished label, by " + panel.law() + ". " + panel.subject());
        draft.say(
                "Shaded cells are yours to change; the exact amounts per serving follow. The columns called draft are as"
                        + " panade printed them and are not recalculated.");
        var serving = serving();
        draft.head(
                "",
                "Unit",
                "Exact, per 100 g",
                "Exact, per serving",
                "",
                "Draft, per serving",
                "Draft, " + panel.percentHeading() + (panel.serving() == null ? ", of 100 g" : ", of a serving"),
                "Draft, per 100 g",
                "Not known for");
        panel.rows().forEach(row -> row(row, serving));
        draft.add(Cell.BLANK);
        panel.notes().forEach(draft::say);
        return draft.finish();
    }

    /** Gives the cell of a serving's grams, as formulas in any row name it. */
    private String serving() {
        var stated = panel.servingGrams();
        int row = draft.add(
                Cell.text("Serving, raw"),
                Cell.text("g"),
                stated == null ? new Text("", Look.INPUT) : Cell.input(stated, Form.VALUE),
                Cell.BLANK,
                Cell.BLANK,
                Cell.text(Objects.requireNonNullElse(panel.serving(), "none is stated")),
                Cell.BLANK,
                Cell.text(panel.servings() == null ? "" : panel.servings() + " servings in a package"));
        return "$" + Place.column(HUNDRED) + "$" + row;
    }

    private void row(Row row, String serving) {
        var hundred = row.per100g();
        draft.add(
                Cell.text("  ".repeat(row.level()) + row.name()),
                Cell.text(row.unit()),
                hundred == null ? new Text(PanelResult.NOT_KNOWN, Look.INPUT) : Cell.input(hundred, Form.AMOUNT),
                portion(row, Place.of(HUNDRED, draft.next()), serving),
                Cell.BLANK,
                Cell.text(row.perServingText()),
                Cell.text(Objects.requireNonNullElse(row.percent(), "")),
                Cell.text(row.per100gText()),
                Cell.text(unknown(row)));
    }

    /** Nothing without a serving; what is not known stays so, until somebody types a number. */
    private Cell portion(Row row, String hundred, String serving) {
        var expression = "IF(ISNUMBER(" + serving + "),IF(ISNUMBER(" + hundred + ")," + hundred + "*" + serving
                + "/100,\"" + PanelResult.NOT_KNOWN + "\"),\"\")";
        var exact = row.perServing();
        return exact == null
                ? new Remark(expression, panel.serving() == null ? "" : PanelResult.NOT_KNOWN, Look.PLAIN)
                : new Formula(expression, exact, Form.AMOUNT, Look.PLAIN);
    }

    private static String unknown(Row row) {
        return row.unknownForAll() ? "all ingredients of the blend" : String.join("; ", row.unknownFor());
    }
}
