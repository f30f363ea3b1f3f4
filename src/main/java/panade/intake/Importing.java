package panade.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.origin.Origin;
import panade.domain.pantry.IngredientSet;
import panade.domain.pantry.Property;
import panade.intake.Intake.Document;
import panade.intake.Request.Differing;
import panade.intake.food.CompositionTable;
import panade.intake.food.FoodDataCentral;
import panade.intake.food.IngredientDraft;
import panade.intake.food.OwnTraits;
import panade.intake.food.TraitTable;
import panade.intake.json.Json;
import panade.intake.price.CsvGrid;
import panade.intake.price.PriceRows;
import panade.intake.price.PriceTable;
import panade.intake.price.Quote;
import panade.intake.table.Change;
import panade.intake.table.Faults;
import panade.intake.table.Table;
import panade.intake.table.Tables;
import panade.sheet.Grid;
import panade.sheet.Spreadsheets;
import panade.sheet.WorkbookTooLarge;

/** Takes a file into an ingredient set: reads, merges and checks, and leaves the writing to whoever asked. */
public final class Importing {
    private static final String EMPTY = "{\"ingredients\": []}";

    private final Request request;
    private final Spreadsheets spreadsheets;
    private final Faults faults = new Faults();
    private final List<String> notes = new ArrayList<>();
    private final List<Problem> untaken = new ArrayList<>();
    private final Map<String, Origin> drafted = new HashMap<>();
    private final String shown;
    private final Path setFile;

    private Importing(Request request, Spreadsheets spreadsheets) {
        this.request = request;
        this.spreadsheets = spreadsheets;
        this.shown = request.file().toString();
        this.setFile = request.set().resolve("ingredients.json");
    }

    /** What taking the file in would do, or everything that is wrong with it. */
    public static Reading<Intake> of(Request request, Spreadsheets spreadsheets) {
        return new Importing(request, spreadsheets).read();
    }

    private Reading<Intake> read() {
        boolean exists = Files.exists(setFile);
        var text = exists ? accepted(Documents.text(setFile)) : skeleton();
        var before = text == null ? null : accepted(Documents.setOf(text, setFile.toString()));
        if (text == null || before == null) {
            return rejected();
        }
        var merge = new SetMerge(text, request.differing() == Differing.KEPT, !exists);
        var name = shown.toLowerCase(Locale.ROOT);
        var tables = name.endsWith(".json") ? List.<Table>of() : tables(name);
        if (name.endsWith(".json")) {
            foods(before, merge);
        } else if (faults.none()) {
            compositions(tables, before, merge);
        }
        var set = faults.none() ? checked(merge) : null;
        if (set == null) {
            return rejected();
        }
        var files = new ArrayList<Document>();
        if (!merge.changes().isEmpty() || !exists) {
            files.add(new Document(setFile, written(merge), exists, merge.changes()));
        }
        prices(tables, set).ifPresent(files::add);
        return faults.none()
                ? new Reading.Accepted<>(
                        new Intake(files, notes, texts(untaken), unsaid(merge, set), request.differing()))
                : rejected();
    }

    private static List<String> texts(List<Problem> problems) {
        return problems.stream()
                .map(problem ->
                        problem.origin().place() + ": " + problem.what() + ". " + String.join(" ", problem.advice()))
                .toList();
    }

    private Reading<Intake> rejected() {
        return new Reading.Rejected<>(faults.all());
    }

    private <T> @Nullable T accepted(Reading<T> reading) {
        if (reading instanceof Reading.Rejected<T> rejected) {
            rejected.problems().forEach(faults::add);
            return null;
        }
        return ((Reading.Accepted<T>) reading).value();
    }

    private String skeleton() {
        var folder = request.set().toAbsolutePath().normalize().getFileName();
        return """
                {
                  "title": %s,
                  "assume": {},
                  "traits": {},
                  "ingredients": [
                  ]
                }
                """.formatted(Json.MAPPER.writeValueAsString(folder == null ? "" : folder.toString()));
    }

    /** The set's text, without blocks that nothing was put into. */
    private static String written(SetMerge merge) {
        return merge.text().replace("  \"assume\": {},\n", "").replace("  \"traits\": {},\n", "");
    }

    private List<Table> tables(String name) {
        var grids = name.endsWith(".xlsx") ? workbook() : name.endsWith(".csv") ? csv() : unknown();
        var tables = new ArrayList<Table>();
        for (var grid : grids) {
            if (request.sheet() == null || request.sheet().equals(grid.name())) {
                Tables.find(shown, grid, request.columns()).ifPresentOrElse(tables::add, () -> passOver(grid));
            }
        }
        if (tables.isEmpty() && faults.none()) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "No table of ingredients or prices was found"
                            + (request.sheet() == null ? "" : " on a sheet called \"" + request.sheet() + "\""),
                    "Expected a row of headings near the top: \"id\" or \"name\" with tagnames such as PROCNT, or"
                            + " \"ingredient\" and \"price\".",
                    "Columns that are called otherwise can be named: --column \"Protein=PROCNT\".");
        }
        return tables;
    }

    private void passOver(Grid grid) {
        if (!grid.rows().isEmpty() && !grid.name().isEmpty()) {
            notes.add("The sheet \"" + grid.name() + "\" is no table of ingredients or prices.");
        }
    }

    private List<Grid> workbook() {
        if (!Files.isRegularFile(request.file())) {
            accepted(Documents.text(request.file()));
            return List.of();
        }
        try {
            return spreadsheets.read(request.file());
        } catch (WorkbookTooLarge e) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "This workbook is too large: " + e.getMessage(),
                    "Expected tables of ingredients or prices alone: delete the rest, or save the one sheet as CSV.");
            return List.of();
        } catch (IOException e) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "This is not a workbook that can be read",
                    "Expected a file saved as an Excel workbook (.xlsx), or as CSV.");
            return List.of();
        }
    }

    private List<Grid> csv() {
        var text = accepted(Documents.text(request.file()));
        return text == null
                ? List.of()
                : CsvGrid.of(text, shown, faults).stream().toList();
    }

    private List<Grid> unknown() {
        faults.add(
                new Origin(shown, 0, 0, ""),
                "This kind of file cannot be taken in",
                "Expected a workbook (.xlsx), a table (.csv) or a download of USDA FoodData Central (.json).");
        return List.of();
    }

    private void foods(IngredientSet before, SetMerge merge) {
        var reader = new FoodDataCentral(shown, request.only(), before.properties(), faults);
        try {
            var drafts = reader.read(request.file());
            drafts.forEach(draft -> add(draft, merge));
            if (!reader.notTaken().isEmpty()) {
                notes.add("Not taken, because panade has no component that means the same: "
                        + String.join("; ", reader.notTaken()) + ".");
            }
        } catch (IOException e) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "This is not a download that can be read",
                    "Expected the JSON of USDA FoodData Central, unpacked from its archive.");
        }
    }

    private void compositions(List<Table> tables, IngredientSet before, SetMerge merge) {
        var properties = new LinkedHashMap<>(before.properties());
        var known = Optional.ofNullable(accepted(Documents.setOf(EMPTY, "")))
                .map(IngredientSet::properties)
                .orElse(Map.of());
        tables.stream().filter(Tables::isTraits).forEach(table -> {
            var about = new TraitTable(table, known, faults).read();
            merge.addAbout(about);
            properties.putAll(Tables.declared(about, known));
        });
        var composed = tables.stream().filter(Tables::isComposition).toList();
        if (!request.traits().isEmpty()) {
            var own = new OwnTraits(request.traits(), shown, faults).declared(composed, properties.keySet());
            merge.addAbout(own);
            properties.putAll(Tables.declared(own, known));
        }
        composed.forEach(table -> composition(table, properties, merge));
    }

    private void composition(Table table, Map<String, Property> properties, SetMerge merge) {
        var reader = new CompositionTable(table, properties, faults);
        if (!reader.hasValues()) {
            faults.add(
                    table.headOrigin(0),
                    "No column here is a component or a trait: " + String.join(", ", reader.notTaken()),
                    "Expected INFOODS tagnames such as PROCNT, or --column \"Protein=PROCNT\".");
            return;
        }
        reader.read("imported from " + request.file().getFileName()).forEach(draft -> add(draft, merge));
        reader.notTaken().forEach(column -> notes.add("Column not taken: " + column + "."));
    }

    /** Two rows for one ingredient may differ, and nothing says which of them is meant. */
    private void add(IngredientDraft draft, SetMerge merge) {
        var place = Objects.requireNonNull(draft.origins().get(""));
        var first = drafted.putIfAbsent(draft.id(), place);
        if (first == null) {
            merge.add(draft);
            return;
        }
        faults.add(
                place,
                "\"" + draft.id() + "\" stands here a second time, first at " + first.place(),
                "Expected each ingredient once, with all that is known of it; another supplier's goods need an id of"
                        + " their own.");
    }

    /** The set as it would be; what is wrong with it is told where it came from. */
    private @Nullable IngredientSet checked(SetMerge merge) {
        var reading = Documents.setOf(merge.text(), setFile.toString());
        if (reading instanceof Reading.Rejected<IngredientSet> rejected) {
            var origins = merge.origins();
            rejected.problems()
                    .forEach(problem -> faults.add(
                            new Problem(traced(problem.origin(), origins), problem.what(), problem.advice())));
            return null;
        }
        return ((Reading.Accepted<IngredientSet>) reading).value();
    }

    private static Origin traced(Origin origin, Map<String, Origin> origins) {
        var pointer = origin.pointer();
        while (!pointer.isEmpty()) {
            var found = origins.get(pointer);
            if (found != null) {
                return found;
            }
            pointer = pointer.substring(0, pointer.lastIndexOf('/'));
        }
        return origin;
    }

    private Optional<Document> prices(List<Table> tables, IngredientSet set) {
        var quote = Quote.EMPTY;
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
        untaken.addAll(quote.untaken());
        return faults.none() ? list(quote, set) : Optional.empty();
    }

    /** The price list as it would be, other suppliers' rows as they are. */
    private Optional<Document> list(Quote quote, IngredientSet set) {
        var file = request.set().resolve("prices-" + request.name() + ".csv");
        boolean exists = Files.exists(file);
        var old = exists ? oldRows(file) : List.<List<String>>of();
        boolean kept = request.differing() == Differing.KEPT;
        var replaced = PriceRows.replaced(old, quote);
        var changes = PriceRows.changes(old, replaced);
        var text = PriceRows.csv(kept ? PriceRows.joined(old, quote) : replaced);
        if (faults.none()) {
            accepted(Documents.pricesOf(text, file.toString(), set));
        }
        var spared = PriceRows.spared(old, quote);
        if (!spared.isEmpty()) {
            notes.add("Nothing of " + String.join(", ", doubtful(quote))
                    + " was removed, because a row of theirs could not be taken. As they were: "
                    + String.join(", ", spared) + ".");
        }
        return exists && changes.isEmpty() ? Optional.empty() : Optional.of(new Document(file, text, exists, changes));
    }

    private static List<String> doubtful(Quote quote) {
        return quote.suppliers().stream().filter(quote::isDoubtful).sorted().toList();
    }

    private List<List<String>> oldRows(Path file) {
        var text = accepted(Documents.text(file));
        return text == null ? List.of() : CsvGrid.offers(text, file.toString(), faults);
    }

    private static List<String> unsaid(SetMerge merge, IngredientSet set) {
        var touched = Set.copyOf(merge.changes().stream().map(Change::of).toList());
        return set.ingredients().values().stream()
                .filter(ingredient -> touched.contains(ingredient.id()) && ingredient.allergens() == null)
                .map(ingredient -> ingredient.id())
                .toList();
    }
}
