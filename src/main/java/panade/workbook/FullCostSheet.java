package panade.workbook;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Unit;
import panade.result.BriefFacts;
import panade.result.FullCostResult;
import panade.result.FullCostResult.Making;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** What a packed pound costs in full, worked out from the whole batch: all money paid over all pounds packed. */
final class FullCostSheet {
    private static final int FIGURE = 1;

    private final BriefFacts brief;
    private final FullCostResult full;
    private final Making making;
    private final BigFraction pounds;
    private final SheetDraft sheet = new SheetDraft("Full cost", 44, 14);

    private FullCostSheet(BriefFacts brief, FullCostResult full, Making making) {
        this.brief = brief;
        this.full = full;
        this.making = making;
        this.pounds = Unit.POUND.fromBase(brief.batchKg());
    }

    /**
     * The sheet.
     *
     * @param kilograms where the batch's weight stands
     * @param money where the cost of its ingredients stands
     */
    static Sheet of(BriefFacts brief, FullCostResult full, Making making, String kilograms, String money) {
        return new FullCostSheet(brief, full, making).sheet(kilograms, money);
    }

    private Sheet sheet(String kilograms, String money) {
        sheet.title("What a packed lb costs in full");
        sheet.say(Words.SHADED);
        sheet.head("", Words.currency(brief.currency()));
        var made = formula("batch, lb", kilograms + "/" + Words.POUND, pounds, Form.VALUE);
        var lost = input("lost in making", making.processLoss(), Form.SHARE);
        var packedPounds = pounds.multiply(BigFraction.ONE.subtract(making.processLoss()));
        var packed = formula("packed, lb", made + "*(1-" + lost + ")", packedPounds, Form.VALUE);
        var minutes = input("minutes a batch", making.minutes(), Form.VALUE);
        var more = input("minutes a lb made", making.minutesPerLb(), Form.VALUE);
        var hour = input("an hour of labour", making.perHour(), Form.CASH);
        var ingredients = formula(
                "ingredients of the batch", money, full.ingredientsPerKg().multiply(brief.batchKg()), Form.CASH);
        var labour = formula(
                "labour of the batch",
                "(" + minutes + "+" + more + "*" + made + ")*" + hour + "/60",
                Words.perPound(full.labourPerKg()).multiply(packedPounds),
                Form.CASH);
        var packaging = input("packaging, a packed lb", Words.perPound(full.packagingPerKg()), Form.PRICE);
        var overhead = input("overhead, a packed lb", Words.perPound(full.overheadPerKg()), Form.PRICE);
        var all = "(" + ingredients + "+" + labour + ")/" + packed + "+" + packaging + "+" + overhead;
        var pound = formula("a packed lb", all, Words.perPound(full.packedPerKg()), Form.PRICE);
        addServing(pound);
        return sheet.finish();
    }

    private void addServing(String pound) {
        var serving = full.servingKg();
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
