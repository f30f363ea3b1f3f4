package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.MultiPeriodPlan;
import panade.buy.PurchaseAnswers;
import panade.buy.PurchasePlan;
import panade.buy.PurchasePlan.Line;
import panade.buy.PurchasePlan.Order;
import panade.buy.PurchasePlan.Stock;
import panade.domain.Brief;
import panade.quantity.Unit;
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

    private final Brief first;
    private final List<PurchasePlan> plans;
    private final Unit unit;

    private BuyWorkbook(PurchaseAnswers answers) {
        this.first = answers.products().get(0).best().asked();
        this.unit = first.batch().unit().ofStock();
        this.plans = answers.adapted().map(MultiPeriodPlan::periods).orElse(List.of());
    }

    /** The book. */
    public static Book of(PurchaseAnswers answers) {
        var book = new BuyWorkbook(answers);
        return new Book(List.of(book.orders(), book.store()));
    }

    private BigFraction weight(BigFraction kilograms) {
        return unit.fromBase(kilograms);
    }

    private BigFraction perUnit(BigFraction perKg) {
        return perKg.multiply(unit.factor());
    }

    private Sheet orders() {
        var sheet = new SheetDraft("Orders", 14, 26, 36, 10, 14, 14, 14, 14, 24);
        var money = Words.currency(first);
        sheet.title("What to order");
        sheet.say(plans.isEmpty() ? "No plan was found; panade buy tells why." : Words.SHADED);
        sheet.head(
                "Period",
                "Supplier",
                "Ingredient",
                "Packs",
                unit.symbol() + " a pack",
                unit.symbol(),
                money + " per " + unit.symbol(),
                "Cost, " + money,
                "Sold in");
        var totals = new ArrayList<String>();
        plans.forEach(plan -> plan.orders().forEach(order -> totals.add(order(plan, order, sheet))));
        var cash = plans.stream().map(PurchasePlan::cash).reduce(BigFraction.ZERO, BigFraction::add);
        var storage = plans.stream().map(PurchasePlan::storage).reduce(BigFraction.ZERO, BigFraction::add);
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
    private String order(PurchasePlan plan, Order order, SheetDraft sheet) {
        var supplier = order.terms().supplier();
        int from = sheet.next();
        plan.lines().stream()
                .filter(line -> line.offer().supplier().equals(supplier))
                .forEach(line -> line(plan, line, sheet));
        int to = sheet.next() - 1;
        int delivery =
                row(sheet, supplier + ": delivery", Cell.input(order.terms().delivery(), Form.CASH));
        var sum = (to < from ? "0" : Place.sum(MONEY, from, to)) + "+" + Place.of(MONEY, delivery);
        int total = row(
                sheet,
                supplier + ": in all",
                Cell.total(sum, order.goods().add(order.terms().delivery()), Form.CASH));
        return Place.of(MONEY, total);
    }

    private void line(PurchasePlan plan, Line line, SheetDraft sheet) {
        int row = sheet.next();
        var pack = line.offer().pack();
        sheet.add(
                Cell.text(plan.period()),
                Cell.text(line.offer().supplier()),
                Cell.text(Words.name(first, line.offer().ingredient())),
                Cell.input(pack == null ? weight(line.kilograms()) : line.packs(), Form.VALUE),
                Cell.input(pack == null ? BigFraction.ONE : weight(pack.base()), Form.WEIGHT),
                Cell.formula(Place.of(PACKS, row) + "*" + Place.of(EACH, row), weight(line.kilograms()), Form.WEIGHT),
                Cell.input(perUnit(line.offer().pricePerKg()), Form.PRICE),
                Cell.formula(Place.of(KILOGRAMS, row) + "*" + Place.of(PRICE, row), line.money(), Form.CASH),
                Cell.text(pack == null ? "any weight" : pack.text()));
    }

    private Sheet store() {
        var sheet = new SheetDraft("Store", 14, 36, 12, 12, 12, 12, 12, 14, 14);
        sheet.title("What comes of it, " + unit.symbol() + " as bought");
        sheet.head(
                "Period",
                "Ingredient",
                "Before",
                "Bought",
                "Used",
                "Wasted",
                "Left",
                "per " + unit.symbol(),
                "Left, worth");
        int from = sheet.next();
        plans.forEach(plan -> plan.store().forEach(stock -> stock(plan.period(), stock, sheet)));
        int to = sheet.next() - 1;
        if (to >= from && plans.size() == 1) {
            sheet.add(
                    new Cell.Text("Total", Look.TOTAL),
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.BLANK,
                    Cell.total(Place.sum(8, from, to), plans.get(0).onShelf(), Form.CASH));
        }
        return sheet.finish();
    }

    private void stock(String period, Stock stock, SheetDraft sheet) {
        int row = sheet.next();
        var left = Place.of(2, row) + "+" + Place.of(3, row) + "-" + Place.of(4, row) + "-" + Place.of(5, row);
        sheet.add(
                Cell.text(period),
                Cell.text(Words.name(first, stock.ingredient())),
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
