package panade.workbook;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.label.Panel;
import panade.label.Panel.Row;
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
    private static final BigFraction GRAMS = BigFraction.of(1000);

    private final Panel panel;
    private final String percent;
    private final SheetDraft draft = new SheetDraft("Panel", 30, 8, 16, 18, 2, 18, 18, 18, 40);

    private PanelWorkbook(Panel panel) {
        this.panel = panel;
        this.percent = panel.request().format().percent();
    }

    /**
     * The book.
     *
     * @param what which blend it is of, in a sentence
     */
    public static Book of(Panel panel, String what) {
        return new Book(List.of(
                new PanelWorkbook(panel).rows(what),
                LabelSheets.statement(panel),
                LabelSheets.allergens(panel),
                ProteinSheet.of(panel.protein()),
                LabelSheets.cautions(panel)));
    }

    private Sheet rows(String what) {
        draft.title(panel.title() + ": draft of the label");
        draft.say("DRAFT, not a finished label, by " + panel.request().format().law() + ". " + what);
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
                "Draft, " + percent + (panel.serving() == null ? ", of 100 g" : ", of a serving"),
                "Draft, per 100 g",
                "Not known for");
        panel.rows().forEach(row -> row(row, serving));
        draft.add(Cell.BLANK);
        panel.notes().forEach(draft::say);
        return draft.finish();
    }

    /** Gives the cell of a serving's grams, as formulas in any row name it. */
    private String serving() {
        var stated = panel.serving();
        int row = draft.add(
                Cell.text("Serving, raw"),
                Cell.text("g"),
                stated == null
                        ? new Text("", Look.INPUT)
                        : Cell.input(stated.base().multiply(GRAMS), Form.VALUE),
                Cell.BLANK,
                Cell.BLANK,
                Cell.text(stated == null ? "none is stated" : panel.servingGrams() + " g"),
                Cell.BLANK,
                Cell.text(panel.servings().isEmpty() ? "" : panel.servings() + " servings in a package"));
        return "$" + Place.column(HUNDRED) + "$" + row;
    }

    private void row(Row row, String serving) {
        var hundred = row.per100g();
        draft.add(
                Cell.text("  ".repeat(row.level()) + row.name()),
                Cell.text(row.unit()),
                hundred == null ? new Text(Panel.NOT_KNOWN, Look.INPUT) : Cell.input(hundred, Form.AMOUNT),
                portion(row, Place.of(HUNDRED, draft.next()), serving),
                Cell.BLANK,
                Cell.text(row.perServingText()),
                Cell.text(row.percent()),
                Cell.text(row.per100gText()),
                Cell.text(unknown(row)));
    }

    /** Nothing without a serving; what is not known stays so, until somebody types a number. */
    private Cell portion(Row row, String hundred, String serving) {
        var expression = "IF(ISNUMBER(" + serving + "),IF(ISNUMBER(" + hundred + ")," + hundred + "*" + serving
                + "/100,\"" + Panel.NOT_KNOWN + "\"),\"\")";
        var exact = row.perServing();
        return exact == null
                ? new Remark(expression, panel.serving() == null ? "" : Panel.NOT_KNOWN, Look.PLAIN)
                : new Formula(expression, exact, Form.AMOUNT, Look.PLAIN);
    }

    private String unknown(Row row) {
        return row.unknownFor().size() == panel.ingredients()
                ? "all ingredients of the blend"
                : String.join("; ", row.unknownFor());
    }
}
