package panade.intake.food;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import panade.document.syntax.Problem;
import panade.domain.origin.Origin;
import panade.intake.table.Faults;
import panade.intake.table.Table;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Columns of scores and measures of somebody's own, as the command line names them. */
public final class OwnTraits {
    private static final Pattern WITH_UNIT = Pattern.compile("(.*\\S)\\s*\\(([^()]+)\\)");

    private final List<String> headings;
    private final String shown;
    private final Faults faults;

    public OwnTraits(List<String> headings, String shown, Faults faults) {
        this.headings = headings;
        this.shown = shown;
        this.faults = faults;
    }

    /** What a set has to say of them: those that are not known yet, each with the unit in brackets behind its name. */
    public ObjectNode declared(List<Table> tables, Set<String> known) {
        var about = JsonNodeFactory.instance.objectNode();
        about.putObject("assume");
        var traits = about.putObject("traits");
        var columns =
                tables.stream().flatMap(table -> table.headings().stream()).toList();
        for (var heading : headings) {
            if (!columns.contains(heading)) {
                faults.add(Problem.unknown(
                        new Origin(shown, 0, 0, ""),
                        "There is no column \"" + heading + "\" in a table of ingredients",
                        heading,
                        columns,
                        "Expected --trait with a heading of the table, such as --trait \"bite\"."));
            } else {
                declare(heading, traits, known);
            }
        }
        return about;
    }

    private static void declare(String heading, ObjectNode traits, Set<String> known) {
        var unit = WITH_UNIT.matcher(heading);
        var name = unit.matches() ? unit.group(1) : heading;
        if (!known.contains(name)) {
            var trait = traits.putObject(name);
            if (unit.matches()) {
                trait.put("unit", unit.group(2).strip());
            }
        }
    }
}
