package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.result.BlendResult;
import panade.result.BlendResult.Basis;
import panade.result.BlendResult.BlendLine;
import panade.result.BoundResult;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** A blend with live costs and contents, its bounds, and the pantry and prices it was found with. */
public final class BlendWorkbook {
    private static final int KILOGRAMS = 3;
    private static final int PRICE = 4;
    private static final int USABLE = 5;
    private static final int COST = 6;

    private final BlendResult result;
    private final String money;

    private BlendWorkbook(BlendResult result) {
        this.result = result;
        this.money = Words.currency(result.brief().currency());
    }

    /**
     * The book.
     *
     * @param asked the brief as it was asked, for its pantry and its prices
     */
    public static Book of(BlendResult result, Brief asked) {
        var book = new BlendWorkbook(result);
        var draft = new SheetDraft("Blend", 18, 36, 26, 12, 12, 10, 12, 10, 12);
        int first = book.blend(draft);
        var sheets = new ArrayList<Sheet>();
        sheets.add(draft.finish());
        var full = result.fullCost();
        if (full != null && full.making() != null) {
            int total = first + result.blend().size();
            var kilograms = "Blend!" + Place.of(KILOGRAMS, total);
            var cost = "Blend!" + Place.of(COST, total);
            sheets.add(FullCostSheet.of(result.brief(), full, full.making(), kilograms, cost));
        }
        sheets.add(HoldsSheet.of(result, first));
        sheets.add(book.bounds());
        sheets.add(PantrySheets.ingredients(asked.set()));
        sheets.add(PantrySheets.traits(asked.set()));
        sheets.add(PantrySheets.prices(asked.offers(), result.brief().currency()));
        return new Book(sheets);
    }

    /** Gives the row of the first line. */
    private int blend(SheetDraft sheet) {
        sheet.title(result.brief().title());
        sheet.say("The cheapest blend, proved by panade. " + Words.SHADED);
        sheet.say("Costs and contents follow your changes; whether the bounds still hold, panade tells.");
        sheet.head(
                "Stage",
                "Ingredient",
                "Supplier",
                "Kilograms",
                money + " per kg as bought",
                "Usable",
                "Cost, " + money,
                "Share",
                "Share of the cost");
        int first = sheet.next();
        int total = first + result.blend().size();
        result.blend().forEach(line -> line(line, total, sheet));
        sheet.add(
                new Cell.Text("Total", Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                sum(KILOGRAMS, first, total, result.brief().batchKg(), Form.WEIGHT),
                new Cell.Text("", Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                sum(COST, first, total, result.cost().batch(), Form.CASH),
                sum(COST + 1, first, total, BigFraction.ONE, Form.SHARE),
                sum(COST + 2, first, total, costShares(), Form.SHARE));
        perWeight(sheet, total);
        return first;
    }

    private BigFraction costShares() {
        return result.blend().stream().map(BlendLine::costShare).reduce(BigFraction.ZERO, BigFraction::add);
    }

    private static Cell sum(int column, int first, int total, BigFraction value, Form form) {
        return Cell.total(Place.sum(column, first, total - 1), value, form);
    }

    private static void line(BlendLine line, int total, SheetDraft sheet) {
        int row = sheet.next();
        var cost = Place.of(COST, row);
        sheet.add(
                Cell.text(line.stageTitle()),
                Cell.text(line.name()),
                Cell.text(line.supplier()),
                Cell.input(line.kilograms(), Form.WEIGHT),
                Cell.input(line.pricePerKg(), Form.PRICE),
                Cell.input(line.usable(), Form.SHARE),
                Cell.formula(
                        Place.of(KILOGRAMS, row) + "*" + Place.of(PRICE, row) + "/" + Place.of(USABLE, row),
                        line.cost(),
                        Form.CASH),
                Cell.formula(
                        Place.of(KILOGRAMS, row) + "/" + Place.column(KILOGRAMS) + "$" + total,
                        line.share(),
                        Form.SHARE),
                Cell.formula(part(cost, Place.column(COST) + "$" + total), line.costShare(), Form.SHARE));
    }

    private static String part(String of, String whole) {
        return "IF(" + whole + "=0,0," + of + "/" + whole + ")";
    }

    private void perWeight(SheetDraft sheet, int total) {
        var perKg = Place.of(COST, total) + "/" + Place.of(KILOGRAMS, total);
        each(sheet, money + " per kg", perKg, result.cost().rawPerKg());
        each(
                sheet,
                money + " per lb",
                perKg + "*" + Words.POUND,
                Words.perPound(result.cost().rawPerKg()));
        if (result.cost().basis() == Basis.COOKED) {
            sheet.say("What it was made least for, per cooked weight:");
            int row = sheet.add(
                    Cell.text("left after cooking, kg per kg"),
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.input(result.cost().left(), Form.PRICE));
            each(
                    sheet,
                    money + " per cooked kg",
                    perKg + "/" + Place.of(COST, row),
                    result.cost().perKg());
        }
    }

    private static void each(SheetDraft sheet, String words, String expression, BigFraction value) {
        sheet.add(
                Cell.text(words),
                Cell.BLANK,
                Cell.BLANK,
                Cell.BLANK,
                Cell.BLANK,
                Cell.BLANK,
                Cell.formula(expression, value, Form.PRICE));
    }

    private Sheet bounds() {
        var sheet = new SheetDraft("Bounds", 44, 12, 12, 12, 12, 10, 18, 18);
        var perKg = money + " per kg when ";
        sheet.title("Every bound");
        sheet.say("As proved. The last two columns are what moving the number by one of its unit changes the cost by.");
        sheet.head("Bound", "Value", "Least", "Most", "Unit", "", perKg + "raised", perKg + "lowered");
        result.bounds().get().forEach(bound -> sheet.add(bound(bound)));
        return sheet.finish();
    }

    private static List<Cell> bound(BoundResult bound) {
        var price = bound.priced() ? bound.shadowPrice() : null;
        return List.of(
                Cell.text(bound.title()),
                Words.figure(bound.value(), Form.VALUE),
                Words.figure(bound.min(), Form.VALUE),
                Words.figure(bound.max(), Form.VALUE),
                Cell.text(bound.unit()),
                Cell.text(bound.binding() == null ? "" : "binds"),
                Words.figure(price == null ? null : price.whenRaised(), Form.PLAIN),
                Words.figure(price == null ? null : price.whenLowered(), Form.PLAIN));
    }
}
