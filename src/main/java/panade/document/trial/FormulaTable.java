package panade.document.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.document.kitchen.Workbook;
import panade.document.offer.CsvTable;
import panade.document.offer.PriceCell;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Stage;
import panade.domain.origin.Origin;

/**
 * Reads a formula that is kept as a table, {@code stage,ingredient,amount,supplier}, as if it were written as JSON;
 * each cell keeps its place.
 */
public final class FormulaTable {
    private static final CsvTable.Kind KIND = new CsvTable.Kind(
            "a formula",
            "Formula",
            List.of("stage", "ingredient", "amount", "supplier", "note"),
            List.of("ingredient", "amount"));

    private final Problems problems;
    private final StagedWeights weights = new StagedWeights();

    private FormulaTable(Problems problems) {
        this.problems = problems;
    }

    /** Whether a file is a table by its name. */
    public static boolean isNamed(Path file) {
        return Workbook.isNamed(file)
                || file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    /** The formula; empty when the columns cannot be read. */
    public static Optional<ObjectNode> read(Path file, String shownAs, Problems problems) {
        var table = new FormulaTable(problems);
        return CsvTable.read(file, shownAs, KIND, problems)
                .filter(rows -> table.isFilled(rows, shownAs))
                .map(rows -> {
                    rows.forEach(table::add);
                    return table.weights.formula(new Origin(shownAs, 1, 1, ""));
                });
    }

    private boolean isFilled(List<CsvTable.Row> rows, String shownAs) {
        if (rows.isEmpty()) {
            problems.add(
                    new Origin(shownAs, 0, 0, ""),
                    "There is no formula in this table",
                    "Expected the columns " + String.join(", ", KIND.columns()) + " with a row for each weight; in a"
                            + " workbook, in a sheet called \"" + KIND.sheet() + "\".");
        }
        return !rows.isEmpty();
    }

    private void add(CsvTable.Row row) {
        var ingredient = row.cells().get("ingredient");
        var amount = row.cells().get("amount");
        if (ingredient == null || amount == null || isMissing(ingredient, "a name") || isMissing(amount, "a weight")) {
            return;
        }
        var stage = given(row, "stage");
        weights.add(
                stage == null ? Stage.MIX : stage.text(),
                stage == null ? row.origin() : stage.origin(),
                new Field(ingredient.content(), ingredient.origin(), new TextNode(amount.origin(), amount.content())),
                given(row, "supplier"));
    }

    private boolean isMissing(PriceCell cell, String expected) {
        if (cell.isBlank()) {
            problems.add(cell.origin(), "This cell is empty", "Expected " + expected + " in it.");
        }
        return cell.isBlank();
    }

    private static @Nullable TextNode given(CsvTable.Row row, String column) {
        var cell = row.cells().get(column);
        return cell == null || cell.isBlank() ? null : new TextNode(cell.origin(), cell.content());
    }
}
