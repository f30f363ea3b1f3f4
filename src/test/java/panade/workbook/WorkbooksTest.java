package panade.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import panade.testing.CommandRun;

/** Workbooks hold panade's figures beside live formulas; Apache POI's own evaluator calculates them again. */
class WorkbooksTest {
    private static final String FILLING = "constraints/dumpling-filling.json";
    private static final String SEPTEMBER = "ingredient-sets/netherpleat/prices-september.csv";
    private static final String DECEMBER = "ingredient-sets/netherpleat/prices-december.csv";

    @TempDir
    Path folder;

    static List<List<String>> commands() {
        return List.of(
                List.of("blend", FILLING),
                List.of("batch", FILLING),
                List.of("quotes", FILLING, "--prices", SEPTEMBER, "--prices", DECEMBER),
                List.of("panel", FILLING),
                List.of("panel", FILLING, "--format", "eu", "--weighed"),
                List.of("buy", FILLING + "=240lb"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commands")
    void every_formula_comes_to_the_figure_that_stands_beside_it(List<String> command) throws IOException {
        try (var workbook = new XSSFWorkbook(Files.newInputStream(write(command)))) {
            var evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            var formulas = formulas(workbook);
            assertThat(formulas).isNotEmpty();
            for (var cell : formulas) {
                assertSame(cell, evaluator.evaluate(cell));
            }
        }
    }

    private static void assertSame(Cell cell, CellValue computed) {
        var place = new CellReference(cell).formatAsString() + " " + cell.getCellFormula();
        if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
            double cached = cell.getNumericCellValue();
            assertThat(computed.getNumberValue())
                    .as(place)
                    .isCloseTo(cached, within(1e-12 * Math.max(1, Math.abs(cached))));
        } else {
            assertThat(computed.getStringValue()).as(place).isEqualTo(cell.getStringCellValue());
        }
    }

    private static List<Cell> formulas(XSSFWorkbook workbook) {
        var cells = new ArrayList<Cell>();
        workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.FORMULA) {
                cells.add(cell);
            }
        })));
        return cells;
    }

    @Test
    void a_packed_pound_costs_all_that_is_paid_for_the_batch_over_what_is_packed_of_it() throws IOException {
        try (var workbook = new XSSFWorkbook(Files.newInputStream(write(List.of("blend", FILLING))))) {
            var figures = new HashMap<String, Double>();
            workbook.getSheet("Full cost").forEach(row -> {
                if (row.getCell(1) != null && row.getCell(1).getCellType() != CellType.STRING) {
                    figures.put(
                            row.getCell(0).getStringCellValue(), row.getCell(1).getNumericCellValue());
                }
            });
            // 24 + 20 x 1.08 = 45.6 min at 21.84/h, 3 % of 20 lb lost, .31 and .48 a packed lb
            double paid = figures.getOrDefault("ingredients of the batch", 0.0) + 45.6 * 21.84 / 60;
            assertThat(figures.get("a packed lb")).isCloseTo(paid / 19.4 + 0.79, within(1e-9));
        }
    }

    /** The cost is the demo's proved one; see DemoKitchenTest. */
    @Test
    void the_blend_costs_what_was_proved_and_follows_a_price() throws IOException {
        try (var workbook = new XSSFWorkbook(Files.newInputStream(write(List.of("blend", FILLING))))) {
            var sheet = workbook.getSheet("Blend");
            var perLb = sheet.getRow(sheet.getLastRowNum()).getCell(6);
            assertThat(perLb.getNumericCellValue()).isCloseTo(1.2765316, within(5e-8));
            var price = sheet.getRow(4).getCell(4);
            price.setCellValue(price.getNumericCellValue() + 1);
            var share = sheet.getRow(4).getCell(7).getNumericCellValue();
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            assertThat(perLb.getNumericCellValue()).isCloseTo(1.2765316 + share * 0.45359237, within(5e-8));
        }
    }

    @Test
    void what_the_blend_holds_follows_a_weight() throws IOException {
        try (var workbook = new XSSFWorkbook(Files.newInputStream(write(List.of("blend", FILLING))))) {
            var holds = workbook.getSheet("Holds");
            var foot = holds.getRow(holds.getLastRowNum());
            int column = columnOf("WATER (g/100g)", holds.getRow(3));
            double water = foot.getCell(column).getNumericCellValue();
            var first = workbook.getSheet("Blend").getRow(4).getCell(3);
            first.setCellValue(first.getNumericCellValue() + 1);
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            double batch = 20 * 0.45359237;
            assertThat(foot.getCell(column).getNumericCellValue())
                    .isCloseTo((water * batch + 100) / (batch + 1), within(1e-9));
        }
    }

    private static int columnOf(String heading, Row row) {
        for (var cell : row) {
            if (cell.getStringCellValue().equals(heading)) {
                return cell.getColumnIndex();
            }
        }
        throw new AssertionError("no column " + heading);
    }

    @Test
    void the_same_answer_is_the_same_file() throws IOException {
        var first = Files.readAllBytes(write(List.of("blend", FILLING)));
        assertThat(Files.readAllBytes(write(List.of("blend", FILLING, "--overwrite"))))
                .isEqualTo(first);
    }

    @Test
    void a_file_that_is_there_is_not_written_over_unless_told() throws IOException {
        var file = Files.writeString(folder.resolve("answer.xlsx"), "mine");
        var run = CommandRun.of("blend", FILLING, "--xlsx", file.toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.messages()).contains("is already there").contains("--overwrite");
        assertThat(file).hasContent("mine");
    }

    private Path write(List<String> command) {
        var file = folder.resolve("answer.xlsx");
        var words = new ArrayList<>(command);
        words.addAll(List.of("--xlsx", file.toString()));
        var run = CommandRun.of(words.toArray(String[]::new));
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.messages().strip()).isEqualTo("Written: " + file);
        return file;
    }
}
