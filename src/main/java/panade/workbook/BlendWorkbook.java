package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.Explanation.Limit;
import panade.plan.Outcome.Blended;
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

    private final Blended outcome;
    private final Brief brief;
    private final Blend blend;
    private final BigFraction batch;

    private BlendWorkbook(Blended outcome) {
        this.outcome = outcome;
        this.brief = outcome.brief();
        this.blend = outcome.blend();
        this.batch = brief.batch().base();
    }

    /** The book. */
    public static Book of(Blended outcome) {
        var book = new BlendWorkbook(outcome);
        var draft = new SheetDraft("Blend", 18, 36, 26, 12, 12, 10, 12, 10, 12);
        int first = book.blend(draft);
        var sheets = new ArrayList<Sheet>();
        sheets.add(draft.finish());
        var costs = book.brief.practice().costs();
        if (costs != null) {
            int total = first + book.blend.lines().size();
            var kilograms = "Blend!" + Place.of(KILOGRAMS, total);
            sheets.add(FullCostSheet.of(book.brief, book.blend, costs, kilograms, "Blend!" + Place.of(COST, total)));
        }
        sheets.add(HoldsSheet.of(outcome, first));
        sheets.add(book.bounds());
        sheets.add(PantrySheets.ingredients(outcome.asked().set()));
        sheets.add(PantrySheets.traits(outcome.asked().set()));
        sheets.add(PantrySheets.prices(outcome.asked().offers(), book.brief.currency()));
        return new Book(sheets);
    }

    /** Gives the row of the first line. */
    private int blend(SheetDraft sheet) {
        var money = Words.currency(brief);
        sheet.title(brief.title());
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
        int total = first + blend.lines().size();
        blend.lines().forEach(line -> line(line, total, sheet));
        sheet.add(
                new Cell.Text("Total", Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                sum(KILOGRAMS, first, total, batch, Form.WEIGHT),
                new Cell.Text("", Look.TOTAL),
                new Cell.Text("", Look.TOTAL),
                sum(COST, first, total, blend.rawCostPerKg().multiply(batch), Form.CASH),
                sum(COST + 1, first, total, BigFraction.ONE, Form.SHARE),
                sum(COST + 2, first, total, costShares(), Form.SHARE));
        perWeight(sheet, total, money);
        return first;
    }

    private BigFraction costShares() {
        return blend.rawCostPerKg().signum() == 0 ? BigFraction.ZERO : BigFraction.ONE;
    }

    private static Cell sum(int column, int first, int total, BigFraction value, Form form) {
        return Cell.total(Place.sum(column, first, total - 1), value, form);
    }

    private void line(Blend.Line line, int total, SheetDraft sheet) {
        int row = sheet.next();
        var id = line.use().ingredient();
        var cost = Place.of(COST, row);
        sheet.add(
                Cell.text(Words.stage(brief, line.use().stage())),
                Cell.text(Words.name(brief, id)),
                Cell.text(line.offer().supplier()),
                Cell.input(line.share().multiply(batch), Form.WEIGHT),
                Cell.input(line.offer().pricePerKg(), Form.PRICE),
                Cell.input(brief.set().ingredient(id).usable(), Form.SHARE),
                Cell.formula(
                        Place.of(KILOGRAMS, row) + "*" + Place.of(PRICE, row) + "/" + Place.of(USABLE, row),
                        line.costPerKg().multiply(batch),
                        Form.CASH),
                Cell.formula(
                        Place.of(KILOGRAMS, row) + "/" + Place.column(KILOGRAMS) + "$" + total,
                        line.share(),
                        Form.SHARE),
                Cell.formula(
                        part(cost, Place.column(COST) + "$" + total),
                        Words.ratio(line.costPerKg(), blend.rawCostPerKg()),
                        Form.SHARE));
    }

    private static String part(String of, String whole) {
        return "IF(" + whole + "=0,0," + of + "/" + whole + ")";
    }

    private void perWeight(SheetDraft sheet, int total, String money) {
        var perKg = Place.of(COST, total) + "/" + Place.of(KILOGRAMS, total);
        each(sheet, money + " per kg", perKg, blend.rawCostPerKg());
        each(sheet, money + " per lb", perKg + "*" + Words.POUND, Words.perPound(blend.rawCostPerKg()));
        if (brief.practice().perCooked()) {
            sheet.say("What it was made least for, per cooked weight:");
            var left = brief.practice().cookedWeight() == null ? BigFraction.ONE : blend.weight();
            int row = sheet.add(
                    Cell.text("left after cooking, kg per kg"),
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.input(left, Form.PRICE));
            each(sheet, money + " per cooked kg", perKg + "/" + Place.of(COST, row), blend.costPerKg());
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
        var money = Words.currency(brief) + " per kg when ";
        sheet.title("Every bound");
        sheet.say("As proved. The last two columns are what moving the number by one of its unit changes the cost by.");
        sheet.head("Bound", "Value", "Least", "Most", "Unit", "", money + "raised", money + "lowered");
        outcome.explanation().limits().forEach(limit -> sheet.add(limit(limit)));
        return sheet.finish();
    }

    private static List<Cell> limit(Limit limit) {
        var price = limit.price();
        return List.of(
                Cell.text(limit.title()),
                Words.figure(limit.value(), Form.VALUE),
                Words.figure(limit.min(), Form.VALUE),
                Words.figure(limit.max(), Form.VALUE),
                Cell.text(limit.unit().symbol()),
                Cell.text(limit.touch() == null ? "" : "binds"),
                Words.figure(price == null ? null : price.whenRaised(), Form.PLAIN),
                Words.figure(price == null ? null : price.whenLowered(), Form.PLAIN));
    }
}
