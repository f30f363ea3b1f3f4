package panade.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.document.syntax.Overrides;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.domain.origin.Remark;
import panade.domain.purchase.OfferId;
import panade.sheet.poi.PoiSpreadsheets;
import panade.testing.CommandRun;

/** Kitchens in one workbook: written, read again, changed as somebody would in a spreadsheet program. Data invented. */
class KitchenWorkbooksTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dumpling-filling",
                "dumpling-filling-printed",
                "dumpling-filling-short",
                "dumpling-filling-tidy",
                "skewer-mince",
                "skewer-mince-tidy",
                "taco-crumble",
                "taco-crumble-tidy",
                "taco-wish-list"
            })
    void theDemoComesBackAsItWas(String name) throws IOException {
        comesBack(Path.of("constraints", name + ".json"));
    }

    @Test
    void whatHasNoColumnOfItsOwnComesBackToo() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"traits": {"note": {"absent": 0}, "spread x": {}, "a; b": {"unit": "g/g", "sum": {"FAT": 2, "NA": 0.001}}},
                 "assume": {"LYS": 0}, "ingredients": [
                  {"id": "7", "name": "none", "kinds": ["a;b", "none"], "others": 0, "allergens": [],
                   "values": {"note": 1, "spread x": 2, "FAT": 0.12345678901234567890, "NA": 5}, "spread": {"NA": 0.5}},
                  {"id": "b; c", "values": {"FAT": 3, "spread x": 0}, "label": "12", "note": "=1+1", "usable": "98 %"}]}
                """);
        Files.writeString(
                folder.resolve("p.csv"),
                "ingredient,supplier,price,per,note\n7,Ann,3.123456789012345678,kg,\"a, b\"\nb; c,7,2,3 lb,\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "2026", "ingredients": "set.json", "prices": ["p.csv"], "batch": "10 kg",
                 "cooking": {"lose": {"FAT": "4 %"}}, "only": ["7", "b; c"], "assume": {"HIS": 0},
                 "rules": [{"neverTogether": ["7", "b; c"]}], "costs": {"packaging": "0.31/lb"},
                 "bounds": [{"ingredient": {"7": 1, "b; c": 2}, "max": "90 kg"}, {"ingredient": ["7", "b; c"], "max": "100 %"},
                   {"ingredient": "b; c", "max": "100 %"},
                   {"name": "true", "property": "FAT", "within": {"ingredient": "b; c"}, "per": {"ingredient": ["b; c"]}, "max": "50 %"},
                   {"sum": [{"ingredient": "7"}, {"kind": "none"}], "max": "100 %"}],
                 "stages": [{"id": "soak", "ingredients": ["7"], "share": {"max": "100 %"}, "method": ["Pour; wait.", "none"],
                   "bounds": [{"ingredient": "7", "max": "100 %"}]}, {"id": "mix", "ingredients": ["7"]}]}
                """);
        comesBack(folder.resolve("brief.json"));
    }

    @Test
    void theExampleIsSoundAndMeansWhatItSays() {
        var file = folder.resolve("kitchen.xlsx");
        assertThat(CommandRun.of("new", "--xlsx", file.toString()).status()).isZero();
        assertThat(CommandRun.of("check", "--strict", file.toString()).status()).isZero();
        assertThat(CommandRun.of("blend", file.toString()).output()).contains("Pea crumble", "Proved");
        assertThat(CommandRun.of("buy", file + "=40lb").status()).isZero();
        assertThat(CommandRun.of("new", "--xlsx", file.toString()).messages()).contains("is already there");
    }

    @Test
    void faultsNameSheetAndCell() throws IOException {
        var problems = rejected(example(book -> {
            book.getSheet("Bounds").getRow(1).getCell(2).setCellValue("PROCT");
            book.getSheet("Bounds").getRow(2).getCell(9).setCellValue("8 lbz");
            book.getSheet("Prices").getRow(2).getCell(0).setCellValue("pea-peices");
            book.getSheet("Ingredients").getRow(0).getCell(4).setCellValue("alergens");
            book.getSheet("Stages").getRow(1).getCell(2).setCellValue("texturat");
        }));
        assertThat(problems.stream().map(each -> each.origin().cell()))
                .contains("Bounds!C2", "Bounds!J3", "Prices!A3", "Ingredients!E2", "Stages!C2");
        assertThat(problems.get(0).origin().place()).contains("kitchen.xlsx, ").doesNotContain("/bounds");
        assertThat(problems.toString()).contains("PROCNT", "pea-pieces", "texturate");
    }

    @Test
    void formulasCountAsTheyWereCalculatedAndFailedOnesAreTold() throws IOException {
        var file = example(book -> {
            var cell = book.getSheet("Prices").getRow(2).getCell(2);
            cell.setCellFormula("40*2");
            book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
        });
        var brief = ((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value();
        assertThat(brief.offers().stream()
                        .filter(offer -> offer.ingredient().equals("pea-pieces"))
                        .map(offer -> offer.pricePerKg().toString()))
                .containsExactly("4");
        var problems = rejected(example(book -> {
            var cell = book.getSheet("Prices").getRow(2).getCell(2);
            cell.setCellFormula("1/0");
            book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(cell);
        }));
        assertThat(problems.toString()).contains("Prices!C3", "#DIV/0!");
    }

    @Test
    void rowsOfTheExampleCanBeDeletedAndSheetsBeLeftOut() throws IOException {
        var file = example(book -> {
            book.removeSheetAt(book.getSheetIndex("Suppliers"));
            var bounds = book.getSheet("Bounds");
            bounds.removeRow(bounds.getRow(3));
        });
        var brief = ((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value();
        assertThat(brief.bounds().stream().map(bound -> bound.name()))
                .contains("protein to fill")
                .doesNotContain("salt kept down");
    }

    @Test
    void whatIsNoWorkbookIsTold() throws IOException {
        var file = Files.writeString(folder.resolve("kitchen.xlsx"), "{}");
        assertThat(rejected(file).toString()).contains("This is no workbook");
        assertThat(rejected(folder.resolve("none.xlsx")).toString()).contains("not there");
    }

    private Path example(Consumer<XSSFWorkbook> change) throws IOException {
        var file = folder.resolve("kitchen.xlsx");
        Files.write(file, new PoiSpreadsheets().write(KitchenWorkbooks.example()));
        try (var in = new FileInputStream(file.toFile());
                var book = new XSSFWorkbook(in)) {
            change.accept(book);
            try (var out = new FileOutputStream(file.toFile())) {
                book.write(out);
            }
        }
        return file;
    }

    private static List<Problem> rejected(Path file) {
        return ((Reading.Rejected<Brief>) Documents.readBrief(file, Overrides.NONE)).problems();
    }

    private void comesBack(Path file) throws IOException {
        var reading = KitchenWorkbooks.of(file);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        var written = ((Reading.Accepted<KitchenWorkbooks.Written>) reading).value();
        var workbook = folder.resolve("back.xlsx");
        Files.write(workbook, new PoiSpreadsheets().write(written.book()));
        var again = Documents.readBrief(workbook, Overrides.NONE);
        assertThat(again).isInstanceOf(Reading.Accepted.class);
        assertThat(((Reading.Accepted<Brief>) again).value())
                .usingRecursiveComparison()
                .ignoringFieldsOfTypes(Origin.class, OfferId.class, Remark.class)
                .ignoringFieldsMatchingRegexes(".*\\bfile", ".*\\bremarks", ".*\\bpath", ".*\\bkey")
                .isEqualTo(((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value());
    }
}
