package panade.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.pantry.IngredientSet;
import panade.intake.Intake.Document;
import panade.intake.Request.Differing;
import panade.intake.price.CsvGrid;
import panade.intake.price.PriceRows;
import panade.intake.price.PriceTable;
import panade.intake.price.Quote;
import panade.intake.table.Faults;
import panade.intake.table.Table;
import panade.intake.table.Tables;

/** Takes tables of prices into a price list of a set. */
final class PriceIntake {
    private final Request request;
    private final IngredientSet set;
    private final Faults faults;
    private final List<String> notes;
    private Quote quote = Quote.EMPTY;

    /**
     * An intake.
     *
     * @param set with the ingredients that are taken in along with the prices
     * @param notes is told what else there is to know
     */
    PriceIntake(Request request, IngredientSet set, Faults faults, List<String> notes) {
        this.request = request;
        this.set = set;
        this.faults = faults;
        this.notes = notes;
    }

    /** The price list as it would be; empty where the tables have no prices, or nothing would differ. */
    Optional<Document> list(List<Table> tables) {
        for (var table : tables) {
            if (Tables.isPrices(table)) {
                var reader = new PriceTable(table, request.usual(), set, faults);
                quote = quote.and(reader.read());
                reader.notTaken().forEach(column -> notes.add("Column not taken: " + column + "."));
            }
        }
        if (quote.rows().isEmpty()) {
            quote.untaken().forEach(faults::add);
            return Optional.empty();
        }
        return faults.none() ? list() : Optional.empty();
    }

    /** What is wrong with rows that are left out. */
    List<Problem> untaken() {
        return quote.rows().isEmpty() ? List.of() : quote.untaken();
    }

    /** The first offers; empty where there are none. */
    Optional<Preview> preview() {
        return quote.rows().isEmpty() ? Optional.empty() : Optional.of(Preview.ofPrices(quote, set));
    }

    /** The price list, other suppliers' rows as they are. */
    private Optional<Document> list() {
        var file = request.set().resolve("prices-" + request.name() + ".csv");
        boolean exists = Files.exists(file);
        var old = exists ? rows(file) : List.<List<String>>of();
        boolean kept = request.differing() == Differing.KEPT;
        var replaced = PriceRows.replaced(old, quote);
        var changes = PriceRows.changes(old, replaced);
        var text = PriceRows.csv(kept ? PriceRows.joined(old, quote) : replaced);
        if (faults.none() && Documents.pricesOf(text, file.toString(), set) instanceof Reading.Rejected<?> rejected) {
            rejected.problems().forEach(faults::add);
        }
        noteSpared(old);
        if (!exists) {
            noteOtherLists();
        }
        return exists && changes.isEmpty() ? Optional.empty() : Optional.of(new Document(file, text, exists, changes));
    }

    private void noteSpared(List<List<String>> old) {
        var spared = PriceRows.spared(old, quote);
        if (!spared.isEmpty()) {
            notes.add("Nothing of "
                    + quote.suppliers().stream()
                            .filter(quote::isDoubtful)
                            .sorted()
                            .collect(Collectors.joining(", "))
                    + " was removed, because a row of theirs could not be taken. As they were: "
                    + String.join(", ", spared) + ".");
        }
    }

    /** A new list stands beside those that have the same suppliers' prices already, which may not be what is meant. */
    private void noteOtherLists() {
        try (var files = Files.exists(request.set()) ? Files.list(request.set()) : Stream.<Path>empty()) {
            var names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.startsWith("prices-") && name.endsWith(".csv"))
                    .filter(name -> hasSupplier(request.set().resolve(name)))
                    .sorted()
                    .toList();
            if (!names.isEmpty()) {
                notes.add(String.join(" and ", names) + (names.size() == 1 ? " has" : " have") + " prices of "
                        + String.join(", ", quote.suppliers().stream().sorted().toList())
                        + " as well. To put these in their place, say "
                        + names.stream()
                                .map(name -> "--name " + name.replaceAll("^prices-|\\.csv$", ""))
                                .collect(Collectors.joining(" or "))
                        + ".");
            }
        } catch (IOException e) {
            notes.add("Which other lists have prices of these suppliers could not be seen.");
        }
    }

    private boolean hasSupplier(Path file) {
        var text = Documents.text(file);
        return text instanceof Reading.Accepted<String> accepted
                && CsvGrid.offers(accepted.value(), file.toString(), new Faults()).stream()
                        .anyMatch(row -> quote.suppliers().contains(PriceRows.supplier(row)));
    }

    private List<List<String>> rows(Path file) {
        var reading = Documents.text(file);
        if (reading instanceof Reading.Rejected<String> rejected) {
            rejected.problems().forEach(faults::add);
            return List.of();
        }
        return CsvGrid.offers(((Reading.Accepted<String>) reading).value(), file.toString(), faults);
    }
}
