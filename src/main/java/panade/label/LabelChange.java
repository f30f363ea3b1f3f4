package panade.label;

import java.util.ArrayList;
import java.util.List;
import panade.label.Allergens.Carried;
import panade.label.Panel.Row;

/**
 * What a change of the blend does to its label.
 *
 * @param added names that come onto it
 * @param gone names that leave it
 * @param reordered whether the names that stay change their order
 * @param allergensAdded allergens that must be named now
 * @param allergensGone allergens that need not be named any more
 * @param allergensNotKnown ingredients new with the change of which nobody can tell what they carry
 * @param figures lines of the panel that print something else
 */
public record LabelChange(
        List<String> added,
        List<String> gone,
        boolean reordered,
        List<String> allergensAdded,
        List<String> allergensGone,
        List<String> allergensNotKnown,
        List<Figure> figures) {
    public LabelChange {
        added = List.copyOf(added);
        gone = List.copyOf(gone);
        allergensAdded = List.copyOf(allergensAdded);
        allergensGone = List.copyOf(allergensGone);
        allergensNotKnown = List.copyOf(allergensNotKnown);
        figures = List.copyOf(figures);
    }

    /** A line as it was printed and as it is; per serving, or per 100 g where there is no serving. */
    public record Figure(String id, String name, String before, String after) {}

    /** The difference between two labels by the same rules. */
    public static LabelChange between(Panel before, Panel after) {
        var was = before.statement().labels();
        var is = after.statement().labels();
        return new LabelChange(
                without(is, was),
                without(was, is),
                isReordered(was, is),
                without(allergens(after), allergens(before)),
                without(allergens(before), allergens(after)),
                without(after.allergens().notKnown(), before.allergens().notKnown()),
                figures(before, after));
    }

    private static List<String> allergens(Panel panel) {
        return panel.allergens().named().stream().map(Carried::name).toList();
    }

    /** Whether the names that both have come in another order. */
    public static boolean isReordered(List<String> names, List<String> others) {
        return !common(names, others).equals(common(others, names));
    }

    /** Those of some names that are not among others. */
    public static List<String> without(List<String> names, List<String> others) {
        return names.stream().filter(name -> !others.contains(name)).toList();
    }

    private static List<String> common(List<String> names, List<String> others) {
        return names.stream().filter(others::contains).toList();
    }

    private static List<Figure> figures(Panel before, Panel after) {
        var figures = new ArrayList<Figure>();
        for (var row : before.rows()) {
            after.rows().stream()
                    .filter(other ->
                            other.id().equals(row.id()) && !printed(other).equals(printed(row)))
                    .forEach(other -> figures.add(new Figure(row.id(), row.name(), printed(row), printed(other))));
        }
        return figures;
    }

    private static String printed(Row row) {
        return row.perServingText().isEmpty() ? row.per100gText() : row.perServingText();
    }

    /** Whether the names and their order stay. */
    public boolean keepsNames() {
        return added.isEmpty() && gone.isEmpty() && !reordered;
    }

    /** Whether the same allergens are named, and none may hide in what nobody states. */
    public boolean keepsAllergens() {
        return allergensAdded.isEmpty() && allergensGone.isEmpty() && allergensNotKnown.isEmpty();
    }
}
