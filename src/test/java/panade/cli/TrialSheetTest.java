package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A trial's sheet from the batch to the bench and back, in an invented kitchen. */
class TrialSheetTest {
    private static final int AMOUNT = 6;
    private static final int VALUE = 3;

    @TempDir
    Path folder;

    private CommandRun run = CommandRun.NONE;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [{"id": "meal", "values": {"PROCNT": 50}}, {"id": "water", "values": {"PROCNT": 0}}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\nmeal,x,2,kg\nwater,x,0,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "crumble", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "1 kg", "weighing": "1 g", "bounds": [{"ingredient": "meal", "min": "40 %"}]}
                """);
        Files.writeString(folder.resolve("trials.json"), trials(""));
    }

    private static String trials(String process) {
        return """
                {"brief": "brief.json",
                 "responses": {"break": {"unit": "g"}, "juicy": {"scale": [1, 9]}},
                 "levers": {"meal": {"ingredient": "meal"}%s},
                 "trials": [
                  {"id": "T1", "block": "day 1", "weighed": {"mix": {"meal": "300 g", "water": "700 g"}}, "process": {"rest, min": 10},
                   "measured": {"break": [100, 104], "juicy": {"CD": 5, "AB": 6}}},
                  {"id": "T2", "block": "day 1", "weighed": {"mix": {"meal": "400 g", "water": "600 g"}}, "process": {"rest, min": 30},
                   "measured": {"break": 120, "juicy": {"AB": 7}}},
                  {"id": "T3", "block": "day 1", "weighed": {"mix": {"meal": "500 g", "water": "500 g"}}, "process": {"rest, min": 20},
                   "measured": {"break": 138, "juicy": {"AB": 7, "CD": 8}}}]}
                """.formatted(process);
    }

    @Test
    void theSheetAsksForWhatWasMeasuredBefore() throws IOException {
        assertThat(batch("T4")).as(run.messages()).isZero();
        assertThat(run.output().replaceAll(" +", " "))
                .contains("Trial T4: what to write down")
                .contains("break g ________\nbreak g ________\njuicy 1 to 9 AB ________\njuicy 1 to 9 CD ________\n");
        assertThat(batch("T4", "--json")).isZero();
        var trial = json().get("trial");
        assertThat(trial.get("blanks").size()).isEqualTo(4);
        assertThat(trial.get("code").intValue()).isBetween(100, 999);
        assertThat(batch("T5", "--json")).isZero();
        assertThat(json().get("trial").get("code")).isNotEqualTo(trial.get("code"));
        Files.writeString(folder.resolve("trials.json"), trials(", \"rest\": {\"process\": \"rest, min\"}"));
        assertThat(batch("T4")).as(run.messages()).isZero();
        assertThat(run.output()).contains("rest, min ________");
    }

    /** What is tried is a formula more often than the cheapest blend. */
    @Test
    void aFormulaIsMadeAsATrialToo() throws IOException {
        var formula = Files.writeString(
                folder.resolve("formula.json"),
                "{\"brief\": \"brief.json\", \"made\": {\"mix\": {\"meal\": \"450 g\", \"water\": \"550 g\"}}}");
        var file = folder.resolve("sheet.xlsx");
        var words = List.of(
                "batch",
                formula.toString(),
                "--trial",
                "T4",
                "--trials",
                folder.resolve("trials.json").toString());
        var more = new ArrayList<>(words);
        more.addAll(List.of("--xlsx", file.toString()));
        assertThat(start(more.toArray(String[]::new))).as(run.messages()).isZero();
        assertThat(run.output()).contains("Trial T4: what to write down");
        try (var in = Files.newInputStream(file);
                var workbook = new XSSFWorkbook(in)) {
            var row = workbook.getSheet("Weighed").getRow(1);
            assertThat(row.getCell(AMOUNT - 2).getStringCellValue()).isEqualTo("water");
            assertThat(row.getCell(AMOUNT - 1).getNumericCellValue()).isEqualTo(550);
        }
        more = new ArrayList<>(words);
        more.add("--json");
        assertThat(start(more.toArray(String[]::new))).isZero();
        assertThat(json().get("trial").get("id").stringValue()).isEqualTo("T4");
    }

    /** The batch alone says nothing of trials. */
    @Test
    void aBatchThatIsNoTrialIsAsItWas() {
        assertThat(start("batch", folder.resolve("brief.json").toString(), "--json"))
                .isZero();
        assertThat(json().has("trial")).isFalse();
        assertThat(start("batch", folder.resolve("brief.json").toString(), "--trial", "T4"))
                .isEqualTo(2);
        assertThat(run.messages()).contains("--trial and --trials go together");
        assertThat(batch("T2")).isEqualTo(2);
        assertThat(run.messages()).contains("a trial of that name is there already");
    }

    @Test
    void aFilledSheetIsTakenIn() throws IOException {
        var file = sheet();
        assertThat(fit(file)).as(run.messages()).isZero();
        assertThat(count("break")).isEqualTo(3);
        fill(file, workbook -> {
            weigh(workbook.getSheet("Weighed"), "550", "450 g");
            measure(workbook.getSheet("Measured"), 130, 126, 7);
        });
        assertThat(fit(file)).as(run.messages()).isZero();
        assertThat(count("break")).isEqualTo(4);
        assertThat(count("juicy")).isEqualTo(4);
        var onTheSheet = json();
        Files.writeString(
                folder.resolve("weighed.csv"),
                "trial,stage,ingredient,amount,block\nT4,mix,meal,450 g,day 2\nT4,mix,water,550 g,\n");
        Files.writeString(
                folder.resolve("measured.csv"),
                "trial,response,value,by\nT4,break,130,\nT4,break,126,\nT4,juicy,7,AB\n");
        assertThat(fit(folder.resolve("weighed.csv"), folder.resolve("measured.csv")))
                .as(run.messages())
                .isZero();
        assertThat(json()).isEqualTo(onTheSheet);
    }

    @Test
    void faultsAreToldBySheetAndCell() throws IOException {
        var file = sheet();
        fill(file, workbook -> {
            weigh(workbook.getSheet("Weighed"), "450 spoons", "");
            measure(workbook.getSheet("Measured"), 130, 126, 12);
            workbook.getSheet("Measured").getRow(2).getCell(1).setCellValue("brake");
        });
        assertThat(fit(file)).isEqualTo(3);
        assertThat(run.messages())
                .contains("sheet.xlsx, Weighed!G2: \"450 spoons\" is not a number with a unit")
                .contains("Weighed!G3: This weight is not filled in")
                .contains("Measured!B3: No response is called \"brake\"")
                .contains("Measured!D4: \"12\" is not on the scale of \"juicy\"");
        Files.writeString(folder.resolve("more.csv"), "trial,response,value\nT2,break,99\n");
        assertThat(fit(folder.resolve("more.csv"))).isEqualTo(3);
        assertThat(run.messages()).contains("What was measured of this trial stands in the document already");
    }

    private Path sheet() {
        var file = folder.resolve("sheet.xlsx");
        assertThat(batch("T4", "--xlsx", file.toString())).as(run.messages()).isZero();
        return file;
    }

    private static void fill(Path file, Consumer<XSSFWorkbook> filling) throws IOException {
        try (var in = Files.newInputStream(file);
                var workbook = new XSSFWorkbook(in)) {
            filling.accept(workbook);
            try (var out = Files.newOutputStream(file)) {
                workbook.write(out);
            }
        }
    }

    private static void weigh(XSSFSheet sheet, String... amounts) {
        for (int i = 0; i < amounts.length; i++) {
            set(sheet.getRow(i + 1).getCell(AMOUNT), amounts[i]);
        }
        sheet.getRow(1).getCell(1).setCellValue("day 2");
    }

    private static void set(Cell cell, String text) {
        if (text.matches("\\d+")) {
            cell.setCellValue(Integer.parseInt(text));
        } else if (!text.isEmpty()) {
            cell.setCellValue(text);
        }
    }

    private static void measure(XSSFSheet sheet, int... values) {
        for (int i = 0; i < values.length; i++) {
            sheet.getRow(i + 1).getCell(VALUE).setCellValue(values[i]);
        }
    }

    private int count(String response) {
        for (var each : json().get("responses")) {
            if (each.get("name").stringValue().equals(response)) {
                return each.get("trials").intValue();
            }
        }
        throw new AssertionError(response);
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(run.output());
    }

    private int batch(String id, String... more) {
        var words = new ArrayList<>(List.of(
                "batch",
                folder.resolve("brief.json").toString(),
                "--trial",
                id,
                "--trials",
                folder.resolve("trials.json").toString()));
        words.addAll(List.of(more));
        return start(words.toArray(String[]::new));
    }

    private int fit(Path... tables) {
        var words = new ArrayList<>(List.of("fit", folder.resolve("trials.json").toString(), "--json"));
        for (var table : tables) {
            words.addAll(List.of("--table", table.toString()));
        }
        return start(words.toArray(String[]::new));
    }

    private int start(String... words) {
        run = CommandRun.of(words);
        return run.status();
    }
}
