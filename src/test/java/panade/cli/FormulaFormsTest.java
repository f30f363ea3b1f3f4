package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;

/**
 * The forms in which a formula may stand. Invented; 6 kg of rice at 1, a kilogram of peas at 5 and one from the dearer
 * mill at 6 make 17.
 */
class FormulaFormsTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void write() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [
                  {"id": "rice", "name": "cooked rice", "values": {"PROCNT": 0}, "allergens": []},
                  {"id": "peas", "values": {"PROCNT": 36}, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\nrice,s,1,kg\npeas,s,5,kg\npeas,Tarn Pulses,6,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "loaf", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "1 kg",
                 "stages": [{"id": "soak", "ingredients": ["peas", "rice"]}],
                 "bounds": [{"name": "protein", "property": "PROCNT", "min": "12 %"}]}
                """);
    }

    private CommandRun made(String name, String text) throws IOException {
        var file = Files.writeString(folder.resolve(name), text);
        return CommandRun.of(
                "made", file.toString(), "--brief", folder.resolve("brief.json").toString());
    }

    @Test
    void aTableIsReadAsCooksWriteIt() throws IOException {
        var run = made("formula.csv", """
                stage,ingredient,amount,supplier
                soak,cooked rice,2 kilos,
                soak,peas,1 kg,Tarn Pulses
                soak,peas,1 kg,
                mix,cooked rice,4000 grams,
                """);
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.output().replaceAll("\\s+", " "))
                .contains("As made, 8000 g cost 17.00 USD", "protein: 9, at least 12 % is asked: 3 too little.");
    }

    @Test
    void whatIsWrongInATableIsToldByItsCell() throws IOException {
        var run = made("formula.csv", """
                stage,ingredient,amount,supplier
                soack,rice,"2,5 kg",
                ,pease,1 kg,
                ,rice,,
                ,peas,1 kg,Tarn Puls
                """);
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages())
                .contains("formula.csv:2:1: /0/stage: No stage is called \"soack\"", "Did you mean \"soak\"?")
                .contains("formula.csv:2:12: /0/amount:", "Write it as \"2.5 kg\".")
                .contains("formula.csv:3:2: /1/ingredient: No ingredient is called \"pease\"")
                .contains("formula.csv:4:7: /2/amount: This cell is empty")
                .contains("formula.csv:5:12: /3/supplier: No list has a supplier called \"Tarn Puls\"")
                .contains("Did you mean \"Tarn Pulses\"?", "5 problems");
    }

    @Test
    void aTableNamesNoBrief() throws IOException {
        var file = Files.writeString(folder.resolve("formula.csv"), "ingredient,amount\nrice,1 kg\n");
        var run = CommandRun.of("made", file.toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("It names no brief", "Expected --brief with the path of one");
    }

    @Test
    void aSheetIsReadLikeATableAndFaultsNameItsCells() throws IOException {
        assertThat(sheet("3 kg").output()).contains("As made, 5000 g cost 13.00 USD");
        var run = sheet("3 kgs of it");
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("Formula!C3");
    }

    private CommandRun sheet(String amount) throws IOException {
        var file = folder.resolve("formula.xlsx");
        try (var book = new XSSFWorkbook();
                var out = Files.newOutputStream(file)) {
            var sheet = book.createSheet("Formula");
            var rows =
                    new String[][] {{"stage", "ingredient", "amount"}, {"soak", "peas", "2 kg"}, {"mix", "rice", amount}
                    };
            for (int i = 0; i < rows.length; i++) {
                for (int j = 0; j < rows[i].length; j++) {
                    (j == 0 ? sheet.createRow(i) : sheet.getRow(i))
                            .createCell(j)
                            .setCellValue(rows[i][j]);
                }
            }
            book.write(out);
        }
        return CommandRun.of(
                "made", file.toString(), "--brief", folder.resolve("brief.json").toString());
    }

    /** The cheapest blend is a third of peas, 7/3 a kilogram: no decimal says that, and it counts as kept. */
    @Test
    void aPastResultIsAFormula() throws IOException {
        var brief = folder.resolve("brief.json").toString();
        for (var command : new String[] {"blend", "batch"}) {
            var result = CommandRun.of(command, brief, "--json");
            var run = made("result.json", result.output());
            assertThat(run.status()).as(run.messages()).isZero();
            assertThat(run.output())
                    .contains(" g cost 2.33 USD")
                    .contains("It keeps the one bound that could be measured.");
        }
        var made = CommandRun.of("made", folder.resolve("result.json").toString(), "--brief", brief, "--json");
        assertThat(made("again.json", made.output()).output()).contains(" g cost 2.33 USD");
    }
}
