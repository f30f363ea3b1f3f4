package panade.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The draft of a label as a spreadsheet against the result for machines, and after a cook's changes. Kitchens are
 * invented.
 */
class PanelWorkbookTest {
    private static final String FILLING = "constraints/dumpling-filling.json";
    private static final int SERVING_ROW = 3;
    private static final int FIRST = 5;
    private static final int HUNDRED = 2;
    private static final int PORTION = 3;
    private static final int DRAFT_PORTION = 5;
    private static final int DRAFT_PERCENT = 6;
    private static final int DRAFT_HUNDRED = 7;

    @TempDir
    Path folder;

    private String printed = "";

    private XSSFWorkbook open(String... command) throws IOException {
        var file = folder.resolve("label.xlsx");
        var words = new ArrayList<>(List.of(command));
        words.addAll(List.of("--xlsx", file.toString(), "--overwrite", "--json"));
        var run = CommandRun.of(words.toArray(String[]::new));
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.messages().strip()).isEqualTo("Written: " + file);
        printed = run.output();
        return new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)));
    }

    private JsonNode label() {
        return JsonMapper.shared().readTree(printed);
    }

    private static Row row(XSSFSheet sheet, String name) {
        return StreamSupport.stream(sheet.spliterator(), false)
                .filter(row -> row.getCell(0) != null
                        && row.getCell(0).getStringCellValue().strip().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void recalculate(XSSFWorkbook workbook) {
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
    }

    private static String text(Row row, int column) {
        var cell = row.getCell(column);
        return cell == null ? "" : cell.getStringCellValue();
    }

    private static List<String> words(XSSFSheet sheet) {
        var all = new ArrayList<String>();
        sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.STRING) {
                all.add(cell.getStringCellValue());
            }
        }));
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"us", "eu"})
    void every_line_has_the_exact_figures_and_the_texts_of_the_label(String format) throws IOException {
        try (var workbook = open("panel", FILLING, "--format", format, "--serving", "85 g")) {
            recalculate(workbook);
            var sheet = workbook.getSheet("Panel");
            var rows = label().get("rows");
            assertThat(rows.size()).isGreaterThan(7);
            for (int i = 0; i < rows.size(); i++) {
                var row = sheet.getRow(FIRST + i);
                var line = rows.get(i);
                assertThat(text(row, 0).strip()).isEqualTo(line.get("name").asString());
                assertExact(row.getCell(HUNDRED), line.get("per100g"));
                assertExact(row.getCell(PORTION), line.get("perServing"));
                assertThat(text(row, DRAFT_PORTION))
                        .isEqualTo(line.get("perServingText").asString());
                assertThat(text(row, DRAFT_HUNDRED))
                        .isEqualTo(line.get("per100gText").asString());
                assertThat(text(row, DRAFT_PERCENT))
                        .isEqualTo(
                                line.get("percent").isNull()
                                        ? ""
                                        : line.get("percent").asString());
            }
        }
    }

    private static void assertExact(Cell cell, JsonNode exact) {
        if (exact.isNull()) {
            var words = cell.getCellType() == CellType.FORMULA
                    ? cell.getRichStringCellValue().getString()
                    : cell.getStringCellValue();
            assertThat(words).isEqualTo("not known");
        } else {
            double value = Double.parseDouble(exact.asString());
            assertThat(cell.getNumericCellValue()).isCloseTo(value, within(1e-9 * Math.max(1, value)));
        }
    }

    @Test
    void amounts_per_serving_follow_an_amount_and_the_serving_and_printed_texts_do_not() throws IOException {
        try (var workbook = open("panel", FILLING, "--serving", "113 g")) {
            var sheet = workbook.getSheet("Panel");
            var sodium = row(sheet, "Sodium");
            var text = text(sodium, DRAFT_PORTION);
            sodium.getCell(HUNDRED).setCellValue(400);
            sheet.getRow(SERVING_ROW).getCell(HUNDRED).setCellValue(50);
            recalculate(workbook);
            assertThat(sodium.getCell(PORTION).getNumericCellValue()).isCloseTo(200, within(1e-9));
            assertThat(text(sodium, DRAFT_PORTION)).isEqualTo(text).isEqualTo("430 mg");
            assertThat(text(sheet.getRow(FIRST - 1), DRAFT_PORTION)).startsWith("Draft");
            assertThat(words(sheet)).anyMatch(each -> each.contains("are not recalculated"));
        }
    }

    @Test
    void what_is_not_known_is_words_until_somebody_types_a_number() throws IOException {
        try (var workbook = open("panel", FILLING, "--serving", "50 g")) {
            var iron = row(workbook.getSheet("Panel"), "Iron");
            assertThat(iron.getCell(HUNDRED).getCellType()).isEqualTo(CellType.STRING);
            assertThat(iron.getCell(PORTION).getStringCellValue()).isEqualTo("not known");
            iron.getCell(HUNDRED).setCellValue(3);
            recalculate(workbook);
            assertThat(iron.getCell(PORTION).getNumericCellValue()).isCloseTo(1.5, within(1e-12));
        }
    }

    @Test
    void without_a_serving_nothing_stands_per_serving_until_one_is_typed() throws IOException {
        try (var workbook = open("panel", kitchen("plain", "", "milk").toString())) {
            var sheet = workbook.getSheet("Panel");
            var fat = row(sheet, "Total Fat");
            recalculate(workbook);
            assertThat(fat.getCell(PORTION).getStringCellValue()).isEmpty();
            sheet.getRow(SERVING_ROW).getCell(HUNDRED).setCellValue(200);
            recalculate(workbook);
            assertThat(fat.getCell(PORTION).getNumericCellValue()).isCloseTo(100, within(1e-9));
        }
    }

    @Test
    void what_a_cook_may_change_is_shaded() throws IOException {
        try (var workbook = open("panel", FILLING)) {
            var sheet = workbook.getSheet("Panel");
            assertThat(List.of(
                            sheet.getRow(SERVING_ROW).getCell(HUNDRED),
                            row(sheet, "Sodium").getCell(HUNDRED),
                            row(sheet, "Iron").getCell(HUNDRED)))
                    .allMatch(PanelWorkbookTest::isShaded);
            assertThat(isShaded(row(sheet, "Sodium").getCell(DRAFT_PORTION))).isFalse();
        }
    }

    private static boolean isShaded(Cell cell) {
        return cell.getCellStyle().getFillPattern() == FillPatternType.SOLID_FOREGROUND;
    }

    @Test
    void statement_allergens_protein_and_cautions_are_those_of_the_label() throws IOException {
        try (var workbook = open("panel", FILLING)) {
            var label = label();
            assertThat(words(workbook.getSheet("Statement")))
                    .contains(
                            "Ingredients: " + label.get("statement").get("text").asString());
            var allergens = words(workbook.getSheet("Allergens"));
            for (var each : label.get("allergens").get("named")) {
                assertThat(allergens).contains(each.get("name").asString());
                each.get("from").forEach(from -> assertThat(allergens).contains(from.asString()));
            }
            var protein = workbook.getSheet("Protein");
            for (var score : label.get("proteinQuality")) {
                var row = row(protein, score.get("name").asString());
                assertThat(score.get("score").isNull()).isTrue();
                assertThat(text(row, 1)).isEqualTo("not known");
                score.get("missing")
                        .forEach(each -> assertThat(words(protein))
                                .contains(each.get("ingredient").asString()));
            }
            assertThat(label.get("cautions")).isNotEmpty();
            for (var caution : label.get("cautions")) {
                var row = row(workbook.getSheet("Cautions"), caution.get("text").asString());
                assertThat(text(row, 1)).isEqualTo(caution.get("source").asString());
            }
        }
    }

    @Test
    void a_statement_of_several_lines_has_room_for_them() throws IOException {
        try (var workbook = open("panel", FILLING)) {
            var sheet = workbook.getSheet("Statement");
            var row = sheet.getRow(2);
            int lines = (text(row, 0).length() + 89) / 90;
            assertThat(lines).isGreaterThan(2);
            assertThat(row.getHeightInPoints()).isGreaterThanOrEqualTo(lines * sheet.getDefaultRowHeightInPoints());
            assertThat(row.getCell(0).getCellStyle().getWrapText()).isTrue();
        }
    }

    /** OWASP, CSV Injection, lists the signs. */
    @ParameterizedTest
    @ValueSource(strings = {"=HYPERLINK('http://example.invalid')", "+1+1", "-1-1", "@SUM(A1)"})
    void names_that_begin_like_a_formula_stay_words(String name) throws IOException {
        try (var workbook = open(
                "panel",
                kitchen(name, "\"serving\": \"100 g\",", "other: " + name).toString())) {
            var hostile = new ArrayList<Cell>();
            workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().startsWith(name)) {
                    hostile.add(cell);
                }
            })));
            assertThat(hostile.stream().map(cell -> cell.getSheet().getSheetName()))
                    .contains("Panel", "Statement", "Allergens", "Protein");
            assertThat(hostile).allMatch(cell -> cell.getCellStyle().getQuotePrefixed());
        }
    }

    /** Half of it fat; the other half protein of which nothing else is stated. */
    private Path kitchen(String name, String more, String allergen) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [
                  {"id": "fat", "name": "fat", "values": {"FAT": 100}, "others": 0, "allergens": []},
                  {"id": "protein", "name": "%s", "label": "%s", "values": {"PROCNT": 80, "FAT": 0}, "allergens": ["%s"]}
                ]}""".formatted(name, name, allergen));
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\nfat,anyone,1,kg\nprotein,anyone,2,kg\n");
        return Files.writeString(folder.resolve("brief.json"), """
                {"title": "%s", %s "ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg",
                 "bounds": [{"name": "half", "property": "FAT", "min": "50 %%", "max": "50 %%"}]}""".formatted(name, more));
    }
}
