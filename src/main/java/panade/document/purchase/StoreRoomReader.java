package panade.document.purchase;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.offer.CsvTable;
import panade.document.offer.OfferRow;
import panade.document.syntax.Amounts;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.OrderTerms;
import panade.domain.purchase.StoreRoom;
import panade.quantity.Decimal;
import panade.quantity.Quantity;

/** Reads suppliers' order terms and what is on hand. */
public final class StoreRoomReader {
    private static final CsvTable.Kind TERMS = new CsvTable.Kind(
            "a list of suppliers",
            "Suppliers",
            List.of("supplier", "minimumOrder", "delivery", "leadDays"),
            List.of("supplier"));
    private static final CsvTable.Kind STOCK = new CsvTable.Kind(
            "a stock list", "Stock", List.of("ingredient", "amount", "bestBefore"), List.of("ingredient", "amount"));

    private static final BigFraction LONGEST_WAIT = BigFraction.of(3650);

    private final LocalDate today;
    private final Problems problems;

    public StoreRoomReader(LocalDate today, Problems problems) {
        this.today = today;
        this.problems = problems;
    }

    /** The store room; terms are read where there is such a file. */
    public StoreRoom read(List<Path> termFiles, @Nullable Path stock, IngredientSet set) {
        var terms = terms(termFiles);
        return new StoreRoom(terms, stock == null ? List.of() : stock(stock, Optional.of(set)));
    }

    /** Suppliers' terms by supplier, from those of the files that are there. */
    public Map<String, OrderTerms> terms(List<Path> files) {
        var terms = new LinkedHashMap<String, OrderTerms>();
        for (var file : files) {
            if (Files.exists(file)) {
                CsvTable.read(file, file.toString(), TERMS, problems).ifPresent(rows -> terms(rows, terms));
            }
        }
        return terms;
    }

    /** The rows of a file of terms as they are written, by column. */
    public static List<Map<String, String>> written(Path file, Problems problems) {
        return CsvTable.written(CsvTable.read(file, file.toString(), TERMS, problems));
    }

    /** The same of a text that is not in a file. */
    public static List<Map<String, String>> written(String text, Problems problems) {
        return CsvTable.written(CsvTable.parse(text, "", TERMS, problems));
    }

    /** Names of a file's suppliers, each with its place; none where it cannot be read. */
    static Map<String, Origin> suppliers(Path file) {
        var unheard = new Problems();
        var suppliers = new LinkedHashMap<String, Origin>();
        CsvTable.read(file, file.toString(), TERMS, unheard)
                .ifPresent(rows ->
                        rows.forEach(row -> Optional.ofNullable(row.cells().get("supplier"))
                                .filter(cell -> !cell.isBlank())
                                .ifPresent(cell -> suppliers.putIfAbsent(cell.content(), cell.origin()))));
        return suppliers;
    }

    /** Whether a file's first line names a column that only suppliers' terms have. */
    public static boolean isTerms(Path file) {
        var header = header(file);
        return List.of("minimumOrder", "delivery", "leadDays").stream().anyMatch(header::contains);
    }

    /** Whether a file's first line is that of a stock list. */
    public static boolean isStock(Path file) {
        var header = header(file);
        return header.contains("amount") && !header.contains("price");
    }

    private static String header(Path file) {
        try (var lines = Files.lines(file)) {
            return lines.findFirst().orElse("");
        } catch (IOException | UncheckedIOException unreadable) {
            return ""; // told where it is read as a price list
        }
    }

    /** What is on hand. */
    public List<StoreRoom.Stock> stock(Path file, Optional<IngredientSet> set) {
        var onHand = new ArrayList<StoreRoom.Stock>();
        CsvTable.read(file, file.toString(), STOCK, problems)
                .ifPresent(rows -> rows.forEach(row -> stock(row, set, onHand)));
        return onHand;
    }

    private void terms(List<CsvTable.Row> rows, Map<String, OrderTerms> terms) {
        var here = new HashSet<String>();
        rows.forEach(row -> terms(row).ifPresent(found -> {
            boolean again = !here.add(found.supplier());
            var before = terms.putIfAbsent(found.supplier(), found);
            if (again || (before != null && !before.equals(found))) {
                problems.add(
                        row.origin(),
                        "\"" + found.supplier() + "\" has terms already" + (again ? "" : ", and other ones"),
                        "Expected one row for each supplier.");
            }
        }));
    }

    private Optional<OrderTerms> terms(CsvTable.Row row) {
        var supplier = new OfferRow(row.cells(), problems).name("supplier", "the supplier's name");
        var minimumOrder = money(row, "minimumOrder");
        var delivery = money(row, "delivery");
        int leadDays = days(row);
        return supplier.map(name -> new OrderTerms(name, minimumOrder, delivery, leadDays));
    }

    private static int days(CsvTable.Row row) {
        return Optional.ofNullable(row.cells().get("leadDays"))
                .filter(cell -> !cell.isBlank())
                .flatMap(cell -> Decimal.parse(cell.content())
                        .filter(Amounts::isWhole)
                        .filter(number -> number.signum() >= 0 && number.compareTo(LONGEST_WAIT) <= 0)
                        .or(() -> cell.refuse(
                                "\"" + cell.content() + "\" is not a number of days",
                                "Expected a whole number from 0 to " + LONGEST_WAIT + ", or nothing.")))
                .map(BigFraction::intValue)
                .orElse(0);
    }

    private static BigFraction money(CsvTable.Row row, String column) {
        return Optional.ofNullable(row.cells().get(column))
                .filter(cell -> !cell.isBlank())
                .flatMap(cell -> Decimal.parse(cell.content())
                        .filter(number -> number.signum() >= 0)
                        .or(() -> cell.refuse(
                                "\"" + cell.content() + "\" is not a number from 0 up",
                                "Expected a decimal number with a point, or nothing.")))
                .orElse(BigFraction.ZERO);
    }

    private void stock(CsvTable.Row row, Optional<IngredientSet> set, List<StoreRoom.Stock> onHand) {
        var offer = new OfferRow(row.cells(), problems);
        var id = offer.ingredient(set);
        var amount = offer.amount("amount").map(Quantity::base);
        var date = bestBefore(row);
        boolean isPast = date.filter(last -> last.isBefore(today)).isPresent();
        id.ifPresent(known -> amount.ifPresent(
                kilograms -> onHand.add(new StoreRoom.Stock(known, kilograms, date.orElse(null), isPast))));
    }

    private static Optional<LocalDate> bestBefore(CsvTable.Row row) {
        return Optional.ofNullable(row.cells().get("bestBefore"))
                .filter(cell -> !cell.isBlank())
                .flatMap(cell -> date(cell.content())
                        .or(() -> cell.refuse(
                                "\"" + cell.content() + "\" is not a date",
                                "Expected year, month and day, such as 2026-12-31, or nothing.")));
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
