package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.result.BuyResult;
import panade.result.BuyResult.Line;
import panade.result.BuyResult.Period;
import panade.result.BuyResult.Stock;
import panade.result.BuyResult.SupplierOrder;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** The order lists and the store room of the plan that is advised, money and weights live. */
public final class BuyWorkbook {
    private static final int PACKS = 3;
    private static final int EACH = 4;
    private static final int KILOGRAMS = 5;
    private static final int PRICE = 6;
    private static final int MONEY = 7;

    private final BuyResult result;
    private final List<Period> periods;
    private final String unit;

    private BuyWorkbook(BuyResult result) {
        this.result = result;
        this.periods = result.advised();
        this.unit = result.order().unit();
    }

    /** The book. */
    public static Book of(BuyResult result) {
        var book = new BuyWorkbook(result);
        return new Book(List.of(book.orders(), book.store()));
    }

    private BigFraction weight(BigFraction kilograms) {
        return kilograms.divide(result.order().unitKilograms());
    }

    private BigFraction perUnit(BigFraction perKg) {
        return perKg.multiply(result.order().unitKilograms());
    }

    private Sheet orders() {
        var sheet = new SheetDraft("Orders", 14, 26, 36, 10, 14, 14, 14, 14, 24);
        var money = Words.currency(result.order().currency());
        sheet.title("What to order");
        sheet.say(periods.isEmpty() ? "No plan was found; panade buy tells why." : Words.SHADED);
        sheet.head(
                "Period",
                "Supplier",
                "Ingredient",
                "Packs",
                unit + " a pack",
                unit,
                money + " per " + unit,
                "Cost, " + money,
                "Sold in");
        var totals = new ArrayList<String>();
        periods.forEach(period -> period.orders().forEach(order -> totals.add(order(period, order, sheet))));
        var cash = periods.stream().map(Period::cash).reduce(BigFraction.ZERO, BigFraction::add);
        var storage = periods.stream().map(Period::storage).reduce(BigFraction.ZERO, BigFraction::add);
        if (storage.signum() > 0) {
            totals.add(Place.of(MONEY, row(sheet, "Storage", Cell.input(storage, Form.CASH))));
        }
        if (!totals.isEmpty()) {
            row(sheet, "Cash out", Cell.total(String.join("+", totals), cash, Form.CASH));
        }
        return sheet.finish();
    }

    private static int row(SheetDraft sheet, String words, Cell cell) {
        return sheet.add(
                Cell.BLANK,
                new Cell.Text(words, Look.TOTAL),
                Cell.BLANK,
                Cell.BLANK,
                Cell.BLANK,
                Cell.BLANK,
                Cell.BLANK,
                cell);
    }

    /** Gives the cell of what the order comes to with delivery. */
    private String order(Period period, SupplierOrder order, SheetDraft sheet) {
        var supplier = order.supplier();
        int from = sheet.next();
        period.lines().stream()
                .filter(line -> line.supplier().equals(supplier))
                .forEach(line -> line(period, line, sheet));
        int to = sheet.next() - 1;
        int delivery = row(sheet, supplier + ": delivery", Cell.input(order.delivery(), Form.CASH));
        var sum = (to < from ? "0" : Place.sum(MONEY, from, to)) + "+" + Place.of(MONEY, delivery);
        int total =
                row(sheet, supplier + ": in all", Cell.total(sum, order.goods().add(order.delivery()), Form.CASH));
        return Place.of(MONEY, total);
    }

    private void line(Period period, Line line, SheetDraft sheet) {
        int row = sheet.next();
        var pack = line.packKilograms();
        sheet.add(
                Cell.text(period.period()),
                Cell.text(line.supplier()),
                Cell.text(line.name()),
                Cell.input(line.packs() == null ? weight(line.kilograms()) : line.packs(), Form.VALUE),
                Cell.input(pack == null ? BigFraction.ONE : weight(pack), Form.WEIGHT),
                Cell.formula(Place.of(PACKS, row) + "*" + Place.of(EACH, row), weight(line.kilograms()), Form.WEIGHT),
                Cell.input(perUnit(line.pricePerKg()), Form.PRICE),
                Cell.formula(Place.of(KILOGRAMS, row) + "*" + Place.of(PRICE, row), line.money(), Form.CASH),
                Cell.text(line.pack() == null ? "any weight" : line.pack()));
    }

    private Sheet store() {
        var sheet = new SheetDraft("Store", 14, 36, 12, 12, 12, 12, 12, 14, 14);
        sheet.title("What comes of it, " + unit + " as bought");
        sheet.head("Period", "Ingredient", "Before", "Bought", "Used", "Wasted", "Left", "per " + unit, "Left, worth");
        int from = sheet.next();
        periods.forEach(period -> period.store().forEach(stock -> stock(period.period(), stock, sheet)));
        int to = sheet.next() - 1;
        var plan = result.adapted();
        if (to >= from && plan != null && periods.size() == 1) {
            sheet.add(
                    new Cell.Text("Total", Look.TOTAL),
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.total(Place.sum(8, from, to), plan.onShelf(), Form.CASH));
        }
        return sheet.finish();
    }

    private void stock(String period, Stock stock, SheetDraft sheet) {
        int row = sheet.next();
        var left = Place.of(2, row) + "+" + Place.of(3, row) + "-" + Place.of(4, row) + "-" + Place.of(5, row);
        sheet.add(
                Cell.text(period),
                Cell.text(stock.name()),
                Cell.input(weight(stock.before()), Form.WEIGHT),
                Cell.input(weight(stock.bought()), Form.WEIGHT),
                Cell.input(weight(stock.used()), Form.WEIGHT),
                Cell.input(weight(stock.wasted()), Form.WEIGHT),
                Cell.formula(left, weight(stock.left()), Form.WEIGHT),
                Cell.input(perUnit(stock.paidPerKg()), Form.PRICE),
                Cell.formula(
                        Place.of(6, row) + "*" + Place.of(7, row),
                        stock.left().multiply(stock.paidPerKg()),
                        Form.CASH));
    }
}
