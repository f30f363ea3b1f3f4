package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.Explanation.PropertyValue;
import panade.plan.Outcome.Blended;
import panade.sheet.Cell;
import panade.sheet.Cell.Form;
import panade.sheet.Cell.Look;
import panade.sheet.Place;
import panade.sheet.Sheet;
import panade.sheet.SheetDraft;

/**
 * What the blend holds, as means over the weights on the first sheet: whoever changes a weight sees what comes of it.
 */
final class HoldsSheet {
    private static final int WEIGHTS = 1;
    private static final int FIRST = 2;

    private final Blended outcome;
    private final Brief brief;
    private final List<PropertyValue> known;

    private HoldsSheet(Blended outcome) {
        this.outcome = outcome;
        this.brief = outcome.brief();
        this.known = outcome.explanation().properties().stream()
                .filter(property -> property.value() != null)
                .toList();
    }

    /**
     * The sheet.
     *
     * @param first the row of the first weight on the sheet called Blend
     */
    static Sheet of(Blended outcome, int first) {
        return new HoldsSheet(outcome).sheet(first);
    }

    private Sheet sheet(int first) {
        var sheet = new SheetDraft("Holds", 36, 12);
        var lines = outcome.blend().lines();
        sheet.title("What the blend holds");
        sheet.say("Per line what the ingredient holds, in the unit of the column; at the foot what the blend does.");
        var unknown = unknown();
        sheet.say(
                unknown.isEmpty()
                        ? "Weights come from the sheet called Blend."
                        : "Left out, because an ingredient does not state it: " + String.join(", ", unknown) + ".");
        var heads = new ArrayList<>(List.of("Ingredient", "Kilograms"));
        known.forEach(property -> heads.add(heading(property)));
        int from = sheet.head(heads) + 1;
        for (int i = 0; i < lines.size(); i++) {
            sheet.add(line(lines.get(i), first + i));
        }
        sheet.add(foot(from, from + lines.size() - 1));
        return sheet.finish();
    }

    private List<String> unknown() {
        return outcome.explanation().properties().stream()
                .filter(property -> property.value() == null)
                .map(PropertyValue::property)
                .toList();
    }

    private static String heading(PropertyValue property) {
        var unit = property.unit().symbol();
        return property.property() + (unit.isEmpty() ? "" : " (" + unit + ")");
    }

    private List<Cell> line(Blend.Line line, int row) {
        var id = line.use().ingredient();
        var cells = new ArrayList<Cell>();
        cells.add(Cell.text(Words.name(brief, id)));
        cells.add(Cell.formula(
                "Blend!" + Place.of(3, row), line.share().multiply(brief.batch().base()), Form.WEIGHT));
        known.forEach(property -> cells.add(brief.composition()
                .stated(id, property.property())
                .<Cell>map(value -> Cell.input(value, Form.VALUE))
                .orElse(Cell.BLANK)));
        return cells;
    }

    private List<Cell> foot(int from, int to) {
        var cells = new ArrayList<Cell>();
        cells.add(new Cell.Text("The blend", Look.TOTAL));
        cells.add(Cell.total(Place.sum(WEIGHTS, from, to), brief.batch().base(), Form.WEIGHT));
        var weights = "$" + Place.of(WEIGHTS, from) + ":$" + Place.of(WEIGHTS, to);
        for (int i = 0; i < known.size(); i++) {
            var value = known.get(i).value();
            if (value != null) {
                var mean = "SUMPRODUCT(" + weights + "," + Place.range(FIRST + i, from, to) + ")/SUM(" + weights + ")";
                cells.add(Cell.total(mean, value, Form.VALUE));
            }
        }
        return cells;
    }
}
