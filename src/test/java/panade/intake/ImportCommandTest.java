package panade.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.pantry.IngredientSet;
import panade.quantity.Decimal;
import panade.testing.CommandRun;

/** Tables of other people's, invented, taken into a pantry. */
class ImportCommandTest {
    private static final String PANTRY = """
            // my pantry
            {
              "title": "mine",
              "ingredients": [
                {"id": "water", "values": {"WATER": 100}, "others": 0}, // from the tap
                {"id": "soy", "name": "soy grits", "values": {"PROCNT": 51.0, "FAT": 1}}, /* thirsty */
              ]
            }
            """;

    @TempDir
    Path folder;

    private Path set;
    private String out = "";
    private String err = "";

    @BeforeEach
    void start() {
        set = folder.resolve("mine");
    }

    @Test
    void a_table_with_tagnames_becomes_a_new_pantry() throws IOException {
        var table = write("table.csv", "id,name,WATER,PROCNT,NA\nsoy,soy grits,8,51.5,0.1\n,Pea Flour,,22,\n");
        assertThat(take(table)).isZero();
        assertThat(set().ingredient("soy").values()).containsEntry("NA", Decimal.of("0.1"));
        assertThat(set().ingredient("pea-flour").values()).containsOnlyKeys("PROCNT");
        assertThat(Files.readString(set.resolve("ingredients.json"))).contains("\"NA\": 0.1");
    }

    @Test
    void columns_are_named_and_converted() throws IOException {
        var table = write("table.csv", "Food,Protein,Salt\nsoy,51.5,0.25\n");
        assertThat(take(table, "--column", "Food=name", "--column", "Protein=PROCNT", "--column", "Salt=NACL (g/100g)"))
                .isZero();
        assertThat(set().ingredient("soy").values())
                .containsEntry("PROCNT", Decimal.of("51.5"))
                .containsEntry("NACL", Decimal.of("250"));
    }

    @Test
    void a_column_that_means_nothing_is_told_with_what_it_may_mean() throws IOException {
        var table = write("table.csv", "name,FAT,Sodium,PROTCN\nsoy,1,2,3\n");
        assertThat(take(table)).isZero();
        assertThat(out)
                .contains("\"Sodium\": is it --column \"Sodium=NA\"?")
                .contains("\"PROTCN\": did you mean \"PROCNT\"?");
    }

    @Test
    void additions_leave_comments_and_layout_as_they_are() throws IOException {
        keep(PANTRY);
        var table = write("table.csv", "id,PROCNT,FAT,NA\nsoy,51,1,20\npea,22,,\n");
        assertThat(take(table)).isZero();
        var text = Files.readString(set.resolve("ingredients.json"));
        assertThat(text)
                .startsWith("// my pantry\n")
                .contains("\"others\": 0}, // from the tap\n")
                .contains("{\"PROCNT\": 51.0, \"FAT\": 1, \"NA\": 20}}, /* thirsty */\n")
                .contains("{\"id\": \"pea\",");
        assertThat(set().ingredients()).containsOnlyKeys("water", "soy", "pea");
        assertThat(set.toFile().list()).hasSize(1);
    }

    @Test
    void a_difference_is_shown_and_nothing_written_until_one_says_so() throws IOException {
        keep(PANTRY);
        var table = write("table.csv", "id,PROCNT,FAT\nsoy,52.5,1\npea,22,\n");
        assertThat(take(table)).isEqualTo(3);
        assertThat(out)
                .contains("Nothing was written.")
                .contains("values PROCNT")
                .contains("52.5");
        assertThat(set.resolve("ingredients.json")).hasContent(PANTRY);
        assertThat(take(table, "--keep")).isZero();
        assertThat(set().ingredient("soy").values()).containsEntry("PROCNT", Decimal.of("51"));
        assertThat(set().ingredients()).containsKey("pea");
        var before = Files.readString(set.resolve("ingredients.json"));
        assertThat(take(table, "--update")).isZero();
        assertThat(set().ingredient("soy").values()).containsEntry("PROCNT", Decimal.of("52.5"));
        assertThat(set.resolve("ingredients.json.old")).exists();
        assertThat(Files.readString(set.resolve("ingredients.json"))).contains("// from the tap");
        assertThat(before).isNotEqualTo(Files.readString(set.resolve("ingredients.json")));
    }

    @Test
    void a_dry_run_writes_nothing() throws IOException {
        assertThat(take(write("table.csv", "id,FAT\noil,100\n"), "--dry-run")).isZero();
        assertThat(out).contains("This would be taken in; nothing was written.").contains("oil");
        assertThat(set).doesNotExist();
    }

    @Test
    void faults_name_their_cells() throws IOException {
        var table = write("table.csv", "id,PROCNT,WATER\nsoy,\"51,5\",8\npea,60,60\nbean,tr,\n,5,\nfava,-1,\n");
        assertThat(take(table)).isEqualTo(3);
        assertThat(err)
                .contains("table.csv:2:2: B2: \"51,5\" is not a number.")
                .contains("decimal point, not a comma")
                .contains("table.csv:4:2: B4: \"tr\" is not a number.")
                .contains("table.csv:5:1: A5: This row has no id and no name.");
        assertThat(set).doesNotExist();
        assertThat(take(write("sums.csv", "id,PROCNT,WATER\npea,60,60\nfava,-1,\n")))
                .isEqualTo(3);
        assertThat(err).contains("sums.csv:2:1: A2:").contains("sums.csv:3:2: B3: \"-1\" is below zero");
    }

    @Test
    void an_ingredient_that_a_table_has_twice_is_told_with_both_places() throws IOException {
        assertThat(take(write("table.csv", "id,name,FAT\noil,rapeseed oil,100\npea,pea,5\noil,frying oil,99\n")))
                .isEqualTo(3);
        assertThat(err)
                .contains("table.csv:4:1: A4: \"oil\" stands here a second time, first at")
                .contains("table.csv:2:1: A2");
        assertThat(set).doesNotExist();
        keep("{\"ingredients\": [{\"id\": \"oil\", \"values\": {\"FAT\": 98}}]}");
        assertThat(take(write("again.csv", "id,FAT\noil,100\noil,99\n"), "--update"))
                .isEqualTo(3);
    }

    @Test
    void a_date_in_a_workbook_is_told() throws IOException {
        var file = folder.resolve("table.xlsx");
        try (var workbook = new XSSFWorkbook();
                var to = Files.newOutputStream(file)) {
            var sheet = workbook.createSheet("Mine");
            var head = sheet.createRow(0);
            List.of("id", "FAT")
                    .forEach(name ->
                            head.createCell(head.getPhysicalNumberOfCells()).setCellValue(name));
            var row = sheet.createRow(1);
            row.createCell(0).setCellValue("soy");
            var style = workbook.createCellStyle();
            style.setDataFormat(workbook.createDataFormat().getFormat("d-mmm"));
            row.createCell(1).setCellValue(45_000);
            row.getCell(1).setCellStyle(style);
            workbook.write(to);
        }
        assertThat(take(file)).isEqualTo(3);
        assertThat(err).contains("table.xlsx:2:2: Mine!B2: This cell is a date");
    }

    @Test
    void a_quote_becomes_a_price_list_by_id_or_name() throws IOException {
        keep(PANTRY);
        var quote = write("autumn quote.csv", "ingredient,price,pack,Remarks\nSoy Grits,1.10,25 kg,fresh\nwater,0,,\n");
        assertThat(take(quote)).isEqualTo(3);
        assertThat(err).contains("supplier, per").contains("--supplier NAME");
        assertThat(take(quote, "--supplier", "North Mill", "--per", "lb", "--currency", "USD"))
                .isZero();
        assertThat(set.resolve("prices-autumn-quote.csv")).hasContent("""
                ingredient,supplier,price,per,pack,minimum,available,currency,note
                soy,North Mill,1.1,lb,25 kg,,,USD,fresh
                water,North Mill,0,lb,,,,USD,
                """);
        assertThat(out).contains("Remarks  note");
    }

    @Test
    void a_changed_price_list_shows_its_prices_and_keeps_the_old_one() throws IOException {
        keep(PANTRY);
        Files.writeString(set.resolve("prices-q.csv"), "ingredient,supplier,price,per\nsoy,Mill,22.00,20 kg\n");
        var same = write("q.csv", "ingredient,supplier,price,per\nsoy,Mill,1.1,kg\n");
        assertThat(take(same)).isZero();
        assertThat(out).contains("Nothing to write");
        var quote = write("q.csv", "ingredient,supplier,price,per\nsoy,Mill,1.2,kg\nwater,Tap,0,kg\n");
        assertThat(take(quote)).isEqualTo(3);
        assertThat(out).contains("22.00/20 kg").contains("1.2/kg");
        assertThat(take(quote, "--update")).isZero();
        assertThat(Files.readString(set.resolve("prices-q.csv.old"))).contains("22.00");
        assertThat(Files.readString(set.resolve("prices-q.csv"))).contains("soy,Mill,1.2,kg");
    }

    @Test
    void an_ingredient_that_is_not_there_is_told_with_its_nearest() throws IOException {
        keep(PANTRY);
        var quote = write("q.csv", "ingredient,supplier,price,per\nsoyy,Mill,1.2,kg\n");
        assertThat(take(quote)).isEqualTo(3);
        assertThat(err)
                .contains("q.csv:2:1: A2: There is no ingredient \"soyy\"")
                .contains("Did you mean \"soy\"?");
    }

    @Test
    void what_is_no_table_is_refused_without_a_trace() throws IOException {
        assertThat(take(write("not.xlsx", "hello"))).isEqualTo(3);
        assertThat(err).contains("This is not a workbook that can be read");
        assertThat(take(folder.resolve("none.csv"))).isEqualTo(3);
        assertThat(err).contains("is not there or cannot be read");
        assertThat(take(write("odd.json", "{\"a\": ["))).isEqualTo(3);
        assertThat(err).contains("This is not a download that can be read");
        assertThat(take(write("quote.csv", "id,FAT\n\"oil,1\n"))).isEqualTo(3);
        assertThat(err).contains("A quote in it is not closed");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private void keep(String pantry) throws IOException {
        Files.createDirectories(set);
        Files.writeString(set.resolve("ingredients.json"), pantry);
    }

    private int take(Path file, String... more) {
        var words = new java.util.ArrayList<>(List.of("import", file.toString(), "--into", set.toString()));
        words.addAll(List.of(more));
        var run = CommandRun.of(words.toArray(String[]::new));
        out = run.output();
        err = run.messages();
        return run.status();
    }

    private IngredientSet set() throws IOException {
        var text = Files.readString(set.resolve("ingredients.json"));
        return ((Reading.Accepted<IngredientSet>) Documents.setOf(text, "")).value();
    }
}
