package panade.document.offer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;

/** Reads a price list. */
public final class PriceListReader {
    static final CsvTable.Kind KIND = new CsvTable.Kind(
            "a price list",
            "Prices",
            List.of("ingredient", "supplier", "price", "per", "pack", "minimum", "available", "currency", "note"),
            List.of("ingredient", "supplier", "price", "per"));

    private final String list;
    private final Optional<IngredientSet> set;
    private final Problems problems;
    private Optional<String> currency;

    private PriceListReader(String list, Optional<IngredientSet> set, Optional<String> currency, Problems problems) {
        this.list = list;
        this.set = set;
        this.currency = currency;
        this.problems = problems;
    }

    /** The offers; without a set, ingredients are not looked up, and without a currency the first one stated rules. */
    public static Optional<PriceList> read(
            Path file, String shownAs, Optional<IngredientSet> set, Optional<String> currency, Problems problems) {
        return CsvTable.read(file, shownAs, KIND, problems)
                .map(rows -> new PriceListReader(identity(file), set, currency, problems).list(rows));
    }

    /** The offers of a text that is not in a file yet, for ingredients of a set. */
    public static Optional<PriceList> parse(String text, String shownAs, IngredientSet set, Problems problems) {
        return CsvTable.parse(text, shownAs, KIND, problems)
                .map(rows -> new PriceListReader(shownAs, Optional.of(set), Optional.empty(), problems).list(rows));
    }

    /** The rows of a list as they are written, by column. */
    public static List<Map<String, String>> written(Path file, Problems problems) {
        return CsvTable.written(CsvTable.read(file, file.toString(), KIND, problems));
    }

    /** The same of a text that is not in a file. */
    public static List<Map<String, String>> written(String text, Problems problems) {
        return CsvTable.written(CsvTable.parse(text, "", KIND, problems));
    }

    /** Names of a list's suppliers; none where it is no price list. */
    public static List<String> suppliers(Path file) {
        return CsvTable.read(file, file.toString(), KIND, new Problems()).orElse(List.of()).stream()
                .flatMap(row -> Optional.ofNullable(row.cells().get("supplier")).stream())
                .map(PriceCell::content)
                .toList();
    }

    /** What tells a file from every other, whichever path names it. */
    public static String identity(Path file) {
        try {
            return file.toRealPath().toString();
        } catch (IOException e) {
            return file.toAbsolutePath().normalize().toString();
        }
    }

    private PriceList list(List<CsvTable.Row> rows) {
        var offers = new ArrayList<Offer>();
        rows.forEach(
                row -> offer(new OfferRow(row.cells(), problems), row.origin()).ifPresent(offers::add));
        return new PriceList(offers, currency);
    }

    private Optional<Offer> offer(OfferRow row, Origin origin) {
        int before = problems.count();
        var ingredient = row.ingredient(set);
        var supplier = row.name("supplier", "the supplier's name");
        currency = row.currency(currency);
        var perKg = row.pricePerKg(currency.orElse(""));
        var pack = row.amount("pack");
        var minimum = row.amount("minimum");
        var available = row.amount("available");
        if (problems.count() > before || ingredient.isEmpty() || supplier.isEmpty() || perKg.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Offer(
                new OfferId(list, origin.line(), ingredient.get()),
                ingredient.get(),
                supplier.get(),
                perKg.get(),
                pack.orElse(null),
                minimum.orElse(null),
                available.orElse(null),
                row.note(),
                origin));
    }
}
