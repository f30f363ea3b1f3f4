package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.BlendResult;
import panade.result.BriefResult;
import panade.result.QuotesResult;
import panade.result.QuotesResult.OneBlend;
import panade.result.QuotesResult.Single;
import panade.result.ShareLine;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** Price lists side by side, and the best blend under each with that list's prices, costs live. */
public final class QuotesWorkbook {
    private final QuotesResult result;

    private QuotesWorkbook(QuotesResult result) {
        this.result = result;
    }

    /** The book. */
    public static Book of(QuotesResult result) {
        var book = new QuotesWorkbook(result);
        return new Book(List.of(book.lists(), book.costs(), book.shares()));
    }

    private static @Nullable BigFraction least(BriefResult outcome) {
        return outcome instanceof BlendResult found ? found.cost().perLb() : null;
    }

    private static @Nullable BigFraction perPound(@Nullable BigFraction perKg) {
        return perKg == null ? null : Words.perPound(perKg);
    }

    private Sheet lists() {
        var sheet = new SheetDraft("Lists", 30, 14, 18, 16, 16);
        sheet.title(result.title() + ": " + result.lists().size() + " price lists");
        sheet.say("Cost per lb in " + Words.currency(result.currency()) + ", each a least cost proved by panade. "
                + "Empty where there is no blend.");
        sheet.head("List", "Best blend", "First list's blend", "Switching saves", "As a part");
        for (int j = 0; j < result.lists().size(); j++) {
            sheet.add(list(j, sheet.next()));
        }
        single(sheet, "safest single blend", result.regret());
        single(sheet, "cheapest single blend on average", result.average());
        return sheet.finish();
    }

    private List<Cell> list(int j, int row) {
        var best = least(result.best().get(j));
        var stay = perPound(result.costOf().get(0).get(j));
        var cells = new ArrayList<Cell>();
        cells.add(Cell.text(result.lists().get(j)));
        cells.add(Words.figure(best, Form.PRICE));
        cells.add(Words.figure(stay, Form.PRICE));
        if (best != null && stay != null) {
            var saving = stay.subtract(best);
            cells.add(Cell.formula(Place.of(2, row) + "-" + Place.of(1, row), saving, Form.PRICE));
            cells.add(Cell.formula(
                    "IF(" + Place.of(2, row) + "=0,0," + Place.of(3, row) + "/" + Place.of(2, row) + ")",
                    Words.ratio(saving, stay),
                    Form.SHARE));
        }
        return cells;
    }

    private void single(SheetDraft sheet, String words, @Nullable OneBlend found) {
        if (!(found instanceof Single single)) {
            return;
        }
        sheet.add(Cell.BLANK);
        sheet.head("The " + words + " under", "costs per lb");
        for (int j = 0; j < result.lists().size(); j++) {
            sheet.add(
                    Cell.text(result.lists().get(j)),
                    Cell.figure(Words.perPound(single.costs().get(j)), Form.PRICE));
        }
    }

    private Sheet costs() {
        var sheet = new SheetDraft("Costs", 30);
        sheet.title("Each list's best blend (down) at each list's prices (across), per lb");
        var heads = new ArrayList<>(List.of("Blend of"));
        heads.addAll(result.lists());
        sheet.head(heads);
        for (int i = 0; i < result.lists().size(); i++) {
            var cells = new ArrayList<Cell>();
            cells.add(Cell.text(result.lists().get(i)));
            result.costOf().get(i).forEach(cost -> cells.add(Words.figure(perPound(cost), Form.PRICE)));
            sheet.add(cells);
        }
        return sheet.finish();
    }

    private Sheet shares() {
        var sheet = new SheetDraft("Shares", 36);
        sheet.title("What goes in");
        var heads = new ArrayList<>(List.of("Share of the batch"));
        heads.addAll(result.lists());
        int first = sheet.head(heads) + 1;
        var blends = result.best().stream()
                .map(outcome -> outcome instanceof BlendResult found ? ShareLine.of(found) : List.<ShareLine>of())
                .toList();
        var names = new TreeMap<String, String>();
        blends.forEach(blend -> blend.forEach(line -> names.put(line.ingredient(), line.name())));
        names.forEach((id, name) -> {
            var cells = new ArrayList<Cell>();
            cells.add(Cell.text(name));
            blends.forEach(blend -> cells.add(share(ShareLine.shareOf(id, blend))));
            sheet.add(cells);
        });
        foot(sheet, first, blends);
        return sheet.finish();
    }

    private static Cell share(BigFraction share) {
        return share.signum() == 0 ? Cell.BLANK : Cell.figure(share, Form.SHARE);
    }

    private static void foot(SheetDraft sheet, int first, List<List<ShareLine>> blends) {
        int last = sheet.next() - 1;
        var cells = new ArrayList<Cell>();
        cells.add(new Cell.Text("Total", Cell.Look.TOTAL));
        for (int j = 0; j < blends.size(); j++) {
            cells.add(
                    blends.get(j).isEmpty()
                            ? Cell.BLANK
                            : Cell.total(Place.sum(j + 1, first, last), BigFraction.ONE, Form.SHARE));
        }
        if (last >= first) {
            sheet.add(cells);
        }
    }
}
