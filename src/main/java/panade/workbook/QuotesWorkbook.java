package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.quotes.PriceComparison;
import panade.quotes.PriceComparison.Single;
import panade.sheet.Book;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/** Price lists side by side, and the best blend under each with that list's prices, costs live. */
public final class QuotesWorkbook {
    private final Brief brief;
    private final PriceComparison comparison;

    private QuotesWorkbook(Brief brief, PriceComparison comparison) {
        this.brief = brief;
        this.comparison = comparison;
    }

    /** The book; the brief names the product and its ingredients. */
    public static Book of(Brief brief, PriceComparison comparison) {
        var book = new QuotesWorkbook(brief, comparison);
        return new Book(List.of(book.lists(), book.costs(), book.shares()));
    }

    private static Optional<BigFraction> least(Outcome outcome) {
        return outcome instanceof Blended blended
                ? Optional.of(Words.perPound(blended.blend().costPerKg()))
                : Optional.empty();
    }

    private Sheet lists() {
        var sheet = new SheetDraft("Lists", 30, 14, 18, 16, 16);
        sheet.title(brief.title() + ": " + comparison.lists().size() + " price lists");
        sheet.say("Cost per lb in " + Words.currency(brief) + ", each a least cost proved by panade. "
                + "Empty where there is no blend.");
        sheet.head("List", "Best blend", "First list's blend", "Switching saves", "As a part");
        for (int j = 0; j < comparison.lists().size(); j++) {
            sheet.add(list(j, sheet.next()));
        }
        single(sheet, "safest single blend", comparison.regret().found().orElse(null));
        single(
                sheet,
                "cheapest single blend on average",
                comparison.average().found().orElse(null));
        return sheet.finish();
    }

    private List<Cell> list(int j, int row) {
        var best = least(comparison.best().get(j));
        var stay = comparison.costOf().get(0).get(j).map(Words::perPound);
        var cells = new ArrayList<Cell>();
        cells.add(Cell.text(comparison.lists().get(j)));
        cells.add(Words.figure(best.orElse(null), Form.PRICE));
        cells.add(Words.figure(stay.orElse(null), Form.PRICE));
        if (best.isPresent() && stay.isPresent()) {
            var saving = stay.get().subtract(best.get());
            cells.add(Cell.formula(Place.of(2, row) + "-" + Place.of(1, row), saving, Form.PRICE));
            cells.add(Cell.formula(
                    "IF(" + Place.of(2, row) + "=0,0," + Place.of(3, row) + "/" + Place.of(2, row) + ")",
                    Words.ratio(saving, stay.get()),
                    Form.SHARE));
        }
        return cells;
    }

    private void single(SheetDraft sheet, String words, @Nullable Single single) {
        if (single == null) {
            return;
        }
        sheet.add(Cell.BLANK);
        sheet.head("The " + words + " under", "costs per lb");
        for (int j = 0; j < comparison.lists().size(); j++) {
            sheet.add(
                    Cell.text(comparison.lists().get(j)),
                    Cell.figure(Words.perPound(single.costs().get(j)), Form.PRICE));
        }
    }

    private Sheet costs() {
        var sheet = new SheetDraft("Costs", 30);
        sheet.title("Each list's best blend (down) at each list's prices (across), per lb");
        var heads = new ArrayList<>(List.of("Blend of"));
        heads.addAll(comparison.lists());
        sheet.head(heads);
        for (int i = 0; i < comparison.lists().size(); i++) {
            var cells = new ArrayList<Cell>();
            cells.add(Cell.text(comparison.lists().get(i)));
            comparison
                    .costOf()
                    .get(i)
                    .forEach(cost ->
                            cells.add(Words.figure(cost.map(Words::perPound).orElse(null), Form.PRICE)));
            sheet.add(cells);
        }
        return sheet.finish();
    }

    private Sheet shares() {
        var sheet = new SheetDraft("Shares", 36);
        sheet.title("What goes in");
        var heads = new ArrayList<>(List.of("Share of the batch"));
        heads.addAll(comparison.lists());
        int first = sheet.head(heads) + 1;
        var blends = comparison.best().stream()
                .map(outcome ->
                        outcome instanceof Blended blended ? Optional.of(blended.blend()) : Optional.<Blend>empty())
                .toList();
        var ids = new TreeSet<String>();
        blends.forEach(found -> found.ifPresent(
                blend -> blend.lines().forEach(line -> ids.add(line.use().ingredient()))));
        ids.forEach(id -> {
            var cells = new ArrayList<Cell>();
            cells.add(Cell.text(Words.name(brief, id)));
            blends.forEach(found -> cells.add(Words.figure(
                    found.map(blend -> blend.shareOf(id))
                            .filter(share -> share.signum() > 0)
                            .orElse(null),
                    Form.SHARE)));
            sheet.add(cells);
        });
        foot(sheet, first, blends);
        return sheet.finish();
    }

    private static void foot(SheetDraft sheet, int first, List<Optional<Blend>> blends) {
        int last = sheet.next() - 1;
        var cells = new ArrayList<Cell>();
        cells.add(new Cell.Text("Total", Cell.Look.TOTAL));
        for (int j = 0; j < blends.size(); j++) {
            cells.add(
                    blends.get(j).isPresent()
                            ? Cell.total(Place.sum(j + 1, first, last), BigFraction.ONE, Form.SHARE)
                            : Cell.BLANK);
        }
        if (last >= first) {
            sheet.add(cells);
        }
    }
}
