package panade.intake.food;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import panade.document.syntax.Problem;
import panade.domain.origin.Origin;
import panade.domain.pantry.Property;
import panade.intake.table.Faults;
import panade.intake.table.Table;
import panade.quantity.Decimal;

/** Reads ingredients from a table that has a row for each and a column for each property. */
public final class CompositionTable {
    private final Table table;
    private final Map<String, Property> properties;
    private final Map<String, Integer> headings;
    private final Map<Integer, PropertyColumn> valueColumns = new LinkedHashMap<>();

    public CompositionTable(Table table, Map<String, Property> properties) {
        this.table = table;
        this.properties = properties;
        this.headings = table.byHeading();
        for (int i = 0; i < table.headings().size(); i++) {
            int column = i;
            PropertyColumn.of(table.headings().get(i), properties).ifPresent(found -> valueColumns.put(column, found));
        }
    }

    /** Whether any column is one of values. */
    public boolean hasValues() {
        return !valueColumns.isEmpty();
    }

    /** Columns that mean nothing here, each with what it may have been meant for. */
    public List<String> notTaken() {
        var names = new ArrayList<String>();
        for (int i = 0; i < table.headings().size(); i++) {
            var heading = table.headings().get(i);
            boolean known = valueColumns.containsKey(i) || CompositionRow.isColumn(heading.toLowerCase(Locale.ROOT));
            if (!known && !heading.isBlank()) {
                names.add("\"" + heading + "\"" + meant(heading, isNumeric(i)));
            }
        }
        return names;
    }

    private String meant(String heading, boolean numeric) {
        var near = Problem.unknown(new Origin("", 0, 0, ""), "", heading, properties.keySet(), "")
                .advice();
        var title = properties.values().stream()
                .filter(property -> property.title()
                        .toLowerCase(Locale.ROOT)
                        .startsWith(heading.replaceAll("\\s*\\(.*", "").toLowerCase(Locale.ROOT)))
                .findFirst();
        if (title.isPresent()) {
            return ": is it --column \"" + heading + "=" + title.get().id() + "\"?";
        }
        var slip = near.size() > 1 ? ": " + near.get(1).replace("Did", "did") : "";
        return numeric
                ? slip + (slip.isEmpty() ? ": " : " Or ") + "a score of your own? Say --trait \"" + heading + "\""
                : slip;
    }

    /** Whether numbers stand in a column and nothing else. */
    private boolean isNumeric(int column) {
        var texts = table.rows().stream()
                .map(row -> row.at(column).text().strip())
                .filter(text -> !text.isEmpty())
                .toList();
        return !texts.isEmpty()
                && texts.stream().allMatch(text -> Decimal.parse(text).isPresent());
    }

    /**
     * The ingredients of the rows that can be read.
     *
     * @param source where they come from, for those that do not say
     * @param untaken is told what is wrong with the others
     */
    public List<IngredientDraft> read(String source, Faults untaken) {
        var drafts = new ArrayList<IngredientDraft>();
        for (var row : table.rows()) {
            var found = new Faults();
            var draft = new CompositionRow(row, headings, valueColumns, found).draft(source);
            found.all().forEach(untaken::add);
            if (found.none()) {
                draft.ifPresent(drafts::add);
            }
        }
        return drafts;
    }
}
