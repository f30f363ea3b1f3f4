package panade.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import panade.result.BlendResult;
import panade.result.BlendResult.BlendLine;
import panade.result.BlendResult.PropertyValue;
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

    private final BlendResult result;

    private HoldsSheet(BlendResult result) {
        this.result = result;
    }

    /**
     * The sheet.
     *
     * @param first the row of the first weight on the sheet called Blend
     */
    static Sheet of(BlendResult result, int first) {
        return new HoldsSheet(result).sheet(first);
    }

    private Sheet sheet(int first) {
        var sheet = new SheetDraft("Holds", 36, 12);
        var lines = result.blend();
        sheet.title("What the blend holds");
        sheet.say("Per line what the ingredient holds, in the unit of the column; at the foot what the blend does.");
        var unknown = unknown();
        sheet.say(
                unknown.isEmpty()
                        ? "Weights come from the sheet called Blend."
                        : "Left out, because an ingredient does not state it: " + String.join(", ", unknown) + ".");
        var heads = new ArrayList<>(List.of("Ingredient", "Kilograms"));
        known().map(HoldsSheet::heading).forEach(heads::add);
        int from = sheet.head(heads) + 1;
        for (int i = 0; i < lines.size(); i++) {
            sheet.add(line(lines.get(i), first + i));
        }
        sheet.add(foot(from, from + lines.size() - 1));
        return sheet.finish();
    }

    private Stream<PropertyValue> known() {
        return result.properties().stream().filter(property -> property.value() != null);
    }

    private List<String> unknown() {
        return result.properties().stream()
                .filter(property -> property.value() == null)
                .map(PropertyValue::property)
                .toList();
    }

    private static String heading(PropertyValue property) {
        var unit = property.unit();
        return property.property() + (unit.isEmpty() ? "" : " (" + unit + ")");
    }

    private List<Cell> line(BlendLine line, int row) {
        var cells = new ArrayList<Cell>();
        cells.add(Cell.text(line.name()));
        cells.add(Cell.formula("Blend!" + Place.of(3, row), line.kilograms(), Form.WEIGHT));
        for (int i = 0; i < line.holds().size(); i++) {
            if (result.properties().get(i).value() != null) {
                var value = line.holds().get(i);
                cells.add(value == null ? Cell.BLANK : Cell.input(value, Form.VALUE));
            }
        }
        return cells;
    }

    private List<Cell> foot(int from, int to) {
        var cells = new ArrayList<Cell>();
        cells.add(new Cell.Text("The blend", Look.TOTAL));
        cells.add(Cell.total(Place.sum(WEIGHTS, from, to), result.brief().batchKg(), Form.WEIGHT));
        var weights = "$" + Place.of(WEIGHTS, from) + ":$" + Place.of(WEIGHTS, to);
        for (var property : result.properties()) {
            var value = property.value();
            if (value != null) {
                var held = Place.range(cells.size(), from, to);
                cells.add(
                        Cell.total("SUMPRODUCT(" + weights + "," + held + ")/SUM(" + weights + ")", value, Form.VALUE));
            }
        }
        return cells;
    }
}
