package panade.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Tables whose heads are other people's words, all invented. */
class GuessedColumnsTest {
    @TempDir
    Path folder;

    private String out = "";
    private String err = "";

    @BeforeEach
    void pantry() throws IOException {
        Files.writeString(folder.resolve("ingredients.json"), """
                {"ingredients": [
                  {"id": "water", "values": {"WATER": 100}, "others": 0},
                  {"id": "soy", "name": "soy grits", "values": {"PROCNT": 51}}]}
                """);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "USD per kg | kg | USD",
                "Price (EUR/25 kg) | 25 kg | EUR",
                "Cost per lb | lb |",
                "$/lb | lb |",
                "\u00a3 / kg | kg | GBP",
                "Unit price CAD / 20 kg | 20 kg | CAD"
            })
    void aPriceSaysInItsHeadWhatItIsForAndInWhichMoney(String head, String per, String currency) throws IOException {
        assertThat(take("Item," + head + "\nSoy Grits,2.50\n", "--supplier", "Mill"))
                .as(out + err)
                .isZero();
        assertThat(list()).endsWith("soy,Mill,2.5," + per + ",,,," + (currency == null ? "" : currency) + ",\n");
    }

    @Test
    void commonHeadsAreTakenAndTold() throws IOException {
        var quote = """
                Quotation,,,,,,
                ,,,,,,
                Description,Vendor,Unit Price,UOM,Pack Size,MOQ,In stock,Comments
                Soy Grits,Mill,1.10,lb,25 kg,50 kg,200 kg,fresh
                """;
        assertThat(take(quote)).as(out + err).isZero();
        assertThat(list()).endsWith("soy,Mill,1.1,lb,25 kg,50 kg,200 kg,,fresh\n");
        assertThat(out.replaceAll(" +", " "))
                .contains("Description ingredient", "Vendor supplier", "UOM per", "MOQ minimum", "In stock available")
                .contains("--column \"HEAD=NAME\"")
                .contains("soy grits Mill 1.1/lb 25 kg 50 kg 200 kg fresh");
        assertThat(take(quote, "--json", "--dry-run")).isZero();
        var result = JsonMapper.shared().readTree(out);
        assertThat(result.get("guesses").size()).isEqualTo(8);
        assertThat(result.get("guesses").get(0).toString())
                .isEqualTo("{\"sheet\":\"\",\"heading\":\"Description\",\"as\":\"ingredient\"}");
    }

    /** A bag of 20 kg at 26 is 1.30 a kilogram. */
    @Test
    void aPricePerBagIsForWhatTheBagHolds() throws IOException {
        assertThat(take("Item,Bag size,Price per bag\nsoy,20 kg,26\nwater,,3\n", "--supplier", "Mill"))
                .isEqualTo(3);
        assertThat(list()).contains("soy,Mill,26,20 kg,20 kg,").doesNotContain("water");
        assertThat(out).contains("prices-quote.csv: new, 1 added").contains("The price is for no amount");
    }

    @Test
    void whereSeveralHeadsFitNothingIsGuessed() throws IOException {
        var quote = "Item,Price per kg,Price per bag,Bag size\nsoy,1.3,26,20 kg\n";
        assertThat(take(quote, "--supplier", "Mill")).isEqualTo(3);
        assertThat(err)
                .contains("quote.csv:1:3: C1: Several heads fit \"price\": \"Price per kg\" and \"Price per bag\".")
                .contains("--column \"Price per kg=price\" or --column \"Price per bag=price\"");
        assertThat(folder.resolve("prices-quote.csv")).doesNotExist();
        assertThat(take(quote, "--supplier", "Mill", "--column", "Price per kg=price"))
                .as(err)
                .isZero();
        assertThat(list()).endsWith("soy,Mill,1.3,kg,20 kg,,,,\n");
        assertThat(take("Item,Description,Price\nsoy,soy,1.3\n", "--supplier", "Mill", "--per", "kg"))
                .isEqualTo(3);
        assertThat(err).contains("Several heads fit \"ingredient\"");
    }

    @Test
    void ourOwnHeadsGoBeforeGuesses() throws IOException {
        assertThat(take("ingredient,supplier,price,per,Unit,Cost\nsoy,Mill,1.3,kg,lb,9\n"))
                .as(err)
                .isZero();
        assertThat(list()).endsWith("soy,Mill,1.3,kg,,,,,\n");
        assertThat(out).contains("Column not taken: \"Unit\"").contains("Column not taken: \"Cost\"");
    }

    @Test
    void pricesMayBearTheirSignAndTheirWeight() throws IOException {
        var quote = "Item,Price\nsoy,$1.10/lb\nwater,0 / kg\n";
        assertThat(take(quote, "--supplier", "Mill", "--currency", "USD"))
                .as(out + err)
                .isZero();
        assertThat(list()).contains("soy,Mill,1.1,lb,,,,USD,").contains("water,Mill,0,kg,,,,USD,");
        assertThat(take(quote, "--supplier", "Mill", "--name", "other")).isEqualTo(3);
        assertThat(out).contains("B2: \"$1.10/lb\" bears a sign of money").contains("--currency USD");
        assertThat(take("Item,USD per kg,Unit\nsoy,1.1,lb\n", "--supplier", "Mill"))
                .isEqualTo(3);
        assertThat(err).contains("C2: The price is for lb here, and for kg elsewhere");
    }

    @Test
    void aNewListIsToldOfThoseThatHaveTheSupplierAlready() throws IOException {
        Files.writeString(folder.resolve("prices-today.csv"), "ingredient,supplier,price,per\nsoy,Mill,1,kg\n");
        assertThat(take("Item,USD per kg\nsoy,1.2\n", "--supplier", "Mill", "--dry-run"))
                .isZero();
        assertThat(out).contains("prices-today.csv has prices of Mill as well").contains("--name today");
        assertThat(take("Item,USD per kg\nsoy,1.2\n", "--supplier", "Mill", "--name", "today"))
                .isEqualTo(3);
        assertThat(out).contains("1.2/kg (+20.0 %)").doesNotContain("as well");
        assertThat(take("Item,USD per kg\nsoy,1.2\n", "--supplier", "Port", "--dry-run"))
                .isZero();
        assertThat(out).doesNotContain("as well");
    }

    @Test
    void compositionsAreGuessedWhereTheirUnitIsClear() throws IOException {
        var table = """
                Food,Protein (g),Moisture %,Fat,Fibre per 100 g,Sodium (mg),Potassium,Carbohydrate,Energy (kcal)
                pea flour,22.5,9,1.5,12,5,900,50,340
                """;
        assertThat(take(table)).as(out + err).isZero();
        var values = ingredient(2).get("values");
        assertThat(values.toString())
                .isEqualTo("{\"PROCNT\":22.5,\"WATER\":9,\"FAT\":1.5,\"FIBTG\":12,\"NA\":5,\"ENERC\":340}");
        assertThat(out)
                .contains("Column not taken: \"Potassium\": is it --column \"Potassium=K\"?")
                .contains("Column not taken: \"Carbohydrate\"");
        assertThat(out.replaceAll(" +", " ")).contains("Ingredient protein, total, g/100g");
    }

    /**
     * Water, protein and fat of 60 g each are more than 100 g; a lot of what is left out has nothing to be a lot of.
     */
    @Test
    void ofIngredientsTooWhatCanBeTakenIsTaken() throws IOException {
        var table = """
                id,variantOf,PROCNT,WATER,FAT
                pea,,22,9,1
                bean,,tr,9,1
                heavy,,60,60,60
                heavy-lot,heavy,20,9,1
                pea-lot,pea,23,9,1
                """;
        assertThat(take(table)).isEqualTo(3);
        assertThat(out)
                .contains("Taken in but for")
                .contains("quote.csv:3:3: C3: \"tr\" is not a number")
                .contains("quote.csv:4:1: A4:")
                .contains("quote.csv:5:2: B5:");
        assertThat(set().get("ingredients").findValuesAsString("id")).containsExactly("water", "soy", "pea", "pea-lot");
    }

    private JsonNode set() throws IOException {
        return JsonMapper.shared().readTree(Files.readString(folder.resolve("ingredients.json")));
    }

    private JsonNode ingredient(int index) throws IOException {
        return set().get("ingredients").get(index);
    }

    private String list() throws IOException {
        return Files.readString(folder.resolve("prices-quote.csv"));
    }

    private int take(String table, String... more) throws IOException {
        var file = Files.writeString(folder.resolve("quote.csv"), table);
        Files.deleteIfExists(folder.resolve("prices-quote.csv"));
        var words = new ArrayList<>(List.of("import", file.toString(), "--into", folder.toString()));
        words.addAll(List.of(more));
        var run = CommandRun.of(words.toArray(String[]::new));
        out = run.output();
        err = run.messages();
        return run.status();
    }
}
