package panade.workbook;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.cost.FullCost;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.Costs;
import panade.quantity.Unit;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** What a packed pound costs in full, worked out from the whole batch: all money paid over all pounds packed. */
final class FullCostSheet {
    private static final int FIGURE = 1;

    private final Brief brief;
    private final Costs costs;
    private final FullCost full;
    private final BigFraction pounds;
    private final SheetDraft sheet = new SheetDraft("Full cost", 44, 14);

    private FullCostSheet(Brief brief, Blend blend, Costs costs) {
        this.brief = brief;
        this.costs = costs;
        this.full = FullCost.of(brief, blend);
        this.pounds = Unit.POUND.fromBase(brief.batch().base());
    }

    /**
     * The sheet.
     *
     * @param kilograms where the batch's weight stands
     * @param money where the cost of its ingredients stands
     */
    static Sheet of(Brief brief, Blend blend, Costs costs, String kilograms, String money) {
        return new FullCostSheet(brief, blend, costs).sheet(kilograms, money);
    }

    private Sheet sheet(String kilograms, String money) {
        sheet.title("What a packed lb costs in full");
        sheet.say(Words.SHADED);
        sheet.head("", Words.currency(brief));
        var made = formula("batch, lb", kilograms + "/" + Words.POUND, pounds, Form.VALUE);
        var lost = input("lost in making", costs.processLoss(), Form.SHARE);
        var packedPounds = pounds.multiply(costs.packedPart());
        var packed = formula("packed, lb", made + "*(1-" + lost + ")", packedPounds, Form.VALUE);
        var minutes = input("minutes a batch", costs.minutes(), Form.VALUE);
        var more = input("minutes a lb made", costs.minutesPerLb(), Form.VALUE);
        var hour = input("an hour of labour", costs.perHour(), Form.CASH);
        var ingredients = formula(
                "ingredients of the batch",
                money,
                full.ingredients().multiply(brief.batch().base()),
                Form.CASH);
        var labour = formula(
                "labour of the batch",
                "(" + minutes + "+" + more + "*" + made + ")*" + hour + "/60",
                Words.perPound(full.labour()).multiply(packedPounds),
                Form.CASH);
        var packaging = input("packaging, a packed lb", Words.perPound(costs.packagingPerKg()), Form.PRICE);
        var overhead = input("overhead, a packed lb", Words.perPound(costs.overheadPerKg()), Form.PRICE);
        var all = "(" + ingredients + "+" + labour + ")/" + packed + "+" + packaging + "+" + overhead;
        var pound = formula("a packed lb", all, Words.perPound(full.packed()), Form.PRICE);
        addServing(pound);
        return sheet.finish();
    }

    private void addServing(String pound) {
        var serving = full.serving();
        var each = full.perServing();
        if (serving != null && each != null) {
            var weight = input("a serving, lb", Unit.POUND.fromBase(serving), Form.VALUE);
            formula("a serving, raw", pound + "*" + weight, each, Form.PRICE);
        }
    }

    private String input(String words, BigFraction value, Form form) {
        return Place.of(FIGURE, sheet.add(Cell.text(words), Cell.input(value, form)));
    }

    private String formula(String words, String expression, BigFraction value, Form form) {
        return Place.of(FIGURE, sheet.add(Cell.text(words), Cell.formula(expression, value, form)));
    }
}
