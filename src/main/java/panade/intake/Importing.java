package panade.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
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
import panade.intake.table.Change;
import panade.intake.table.Faults;
import panade.intake.table.Table;
import panade.intake.table.Tables;
import panade.sheet.Spreadsheets;
import tools.jackson.databind.node.ObjectNode;

/** Takes a file into an ingredient set: reads, merges and checks, and leaves the writing to whoever asked. */
public final class Importing {
    private static final String EMPTY = "{\"ingredients\": []}";

    private final Request request;
    private final Spreadsheets spreadsheets;
    private final Faults faults = new Faults();
    private final List<String> notes = new ArrayList<>();
    private final List<Problem> untaken = new ArrayList<>();
    private final String shown;
    private final Path setFile;
    private List<ObjectNode> about = List.of();

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
        var name = shown.toLowerCase(Locale.ROOT);
        boolean foods = name.endsWith(".json");
        var tables = foods
                ? List.<Table>of()
                : new TableFile(request, spreadsheets, before.properties(), faults, notes).tables();
        about = traits(tables, before);
        var drafts = foods ? foods(before) : compositions(tables, before);
        refuseTwice(drafts);
        return faults.none() ? merged(new Base(text, exists), drafts, tables) : rejected();
    }

    /** A set as it is, or as it begins. */
    private record Base(String text, boolean exists) {}

    /**
     * The set with all that can be taken in. A row that makes it faulty is left out, and then those that cannot do
     * without it.
     */
    private Reading<Intake> merged(Base base, List<IngredientDraft> all, List<Table> tables) {
        var drafts = new ArrayList<>(all);
        while (true) {
            var merge = new SetMerge(base.text(), request.differing() == Differing.KEPT, !base.exists());
            about.forEach(merge::addAbout);
            drafts.forEach(merge::add);
            var problems = new ArrayList<Problem>();
            var set = checked(merge, problems);
            if (set != null) {
                return taken(merge, set, drafts, base, tables);
            }
            if (!drafts.removeIf(draft -> isOf(draft, problems)) || drafts.isEmpty()) {
                untaken.forEach(faults::add);
                problems.forEach(faults::add);
                return rejected();
            }
            untaken.addAll(problems);
        }
    }

    /** Two rows for one ingredient may differ, and nothing says which of them is meant. */
    private void refuseTwice(List<IngredientDraft> drafts) {
        var places = new HashMap<String, Origin>();
        for (var draft : drafts) {
            var place = Objects.requireNonNull(draft.origins().get(""));
            var first = places.putIfAbsent(draft.id(), place);
            if (first != null) {
                faults.add(
                        place,
                        "\"" + draft.id() + "\" stands here a second time, first at " + first.place(),
                        "Expected each ingredient once, with all that is known of it; another supplier's goods need an"
                                + " id of their own.");
            }
        }
    }

    private static boolean isOf(IngredientDraft draft, List<Problem> problems) {
        return problems.stream().anyMatch(problem -> draft.origins().containsValue(problem.origin()));
    }

    private Reading<Intake> taken(
            SetMerge merge, IngredientSet set, List<IngredientDraft> drafts, Base base, List<Table> tables) {
        var previews = new ArrayList<Preview>();
        var files = new ArrayList<Document>();
        if (!merge.changes().isEmpty() || !base.exists()) {
            files.add(new Document(setFile, written(merge), base.exists(), merge.changes()));
        }
        if (!drafts.isEmpty()) {
            previews.add(Preview.ofIngredients(drafts, set));
        }
        var prices = new PriceIntake(request, set, faults, notes);
        prices.list(tables).ifPresent(files::add);
        prices.preview().ifPresent(previews::add);
        untaken.addAll(prices.untaken());
        var guesses = tables.stream().flatMap(table -> table.guesses().stream()).toList();
        return faults.none()
                ? new Reading.Accepted<>(new Intake(
                        files, guesses, previews, notes, texts(untaken), unsaid(merge, set), request.differing()))
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

    private List<IngredientDraft> foods(IngredientSet before) {
        var reader = new FoodDataCentral(shown, request.only(), before.properties(), faults);
        try {
            var drafts = reader.read(request.file());
            if (!reader.notTaken().isEmpty()) {
                notes.add("Not taken, because panade has no component that means the same: "
                        + String.join("; ", reader.notTaken()) + ".");
            }
            return drafts;
        } catch (IOException e) {
            faults.add(
                    new Origin(shown, 0, 0, ""),
                    "This is not a download that can be read",
                    "Expected the JSON of USDA FoodData Central, unpacked from its archive.");
            return List.of();
        }
    }

    /** What the file says of the set beside its ingredients: traits, assumptions, title and source. */
    private List<ObjectNode> traits(List<Table> tables, IngredientSet before) {
        var about = new ArrayList<ObjectNode>();
        tables.stream()
                .filter(Tables::isTraits)
                .forEach(table -> about.add(new TraitTable(table, components(), faults).read()));
        if (!request.traits().isEmpty()) {
            var known = new HashSet<>(before.properties().keySet());
            about.forEach(
                    each -> known.addAll(Tables.declared(each, components()).keySet()));
            var composed = tables.stream().filter(Tables::isComposition).toList();
            about.add(new OwnTraits(request.traits(), shown, faults).declared(composed, known));
        }
        return about;
    }

    private Map<String, Property> components() {
        return Optional.ofNullable(accepted(Documents.setOf(EMPTY, "")))
                .map(IngredientSet::properties)
                .orElse(Map.of());
    }

    private List<IngredientDraft> compositions(List<Table> tables, IngredientSet before) {
        var properties = new LinkedHashMap<>(before.properties());
        about.forEach(each -> properties.putAll(Tables.declared(each, components())));
        var drafts = new ArrayList<IngredientDraft>();
        var rows = new Faults();
        tables.stream()
                .filter(Tables::isComposition)
                .forEach(table -> drafts.addAll(composition(table, properties, rows)));
        if (drafts.isEmpty()) {
            rows.all().forEach(faults::add);
        } else {
            untaken.addAll(rows.all());
        }
        return drafts;
    }

    private List<IngredientDraft> composition(Table table, Map<String, Property> properties, Faults rows) {
        var reader = new CompositionTable(table, properties);
        if (!reader.hasValues()) {
            faults.add(
                    table.headOrigin(0),
                    "No column here is a component or a trait: " + String.join(", ", reader.notTaken()),
                    "Expected INFOODS tagnames such as PROCNT, or --column \"Protein=PROCNT\".");
            return List.of();
        }
        reader.notTaken().forEach(column -> notes.add("Column not taken: " + column + "."));
        return reader.read("imported from " + request.file().getFileName(), rows);
    }

    /** The set as it would be, or what is wrong with it, told where it came from. */
    private @Nullable IngredientSet checked(SetMerge merge, List<Problem> found) {
        var reading = Documents.setOf(merge.text(), setFile.toString());
        if (reading instanceof Reading.Rejected<IngredientSet> rejected) {
            var origins = merge.origins();
            rejected.problems()
                    .forEach(problem -> found.add(
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

    private static List<String> unsaid(SetMerge merge, IngredientSet set) {
        var touched = Set.copyOf(merge.changes().stream().map(Change::of).toList());
        return set.ingredients().values().stream()
                .filter(ingredient -> touched.contains(ingredient.id()) && ingredient.allergens() == null)
                .map(ingredient -> ingredient.id())
                .toList();
    }
}
