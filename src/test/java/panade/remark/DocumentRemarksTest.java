package panade.remark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What sets, price lists and suppliers' terms say that may not be meant. */
class DocumentRemarksTest {
    private static final String SALT = """
            {"id": "salt", "values": {"NA": 39300}, "others": 0, "allergens": []}""";

    @TempDir
    private Path folder;

    private RemarkedKitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new RemarkedKitchen(folder);
        kitchen.set("", RemarkedKitchen.PEA, RemarkedKitchen.OIL, RemarkedKitchen.WATER, SALT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"bounds\": [{\"ingredient\": \"salt\", \"max\": \"2 %\"}]",
                "\"bounds\": [{\"ingredient\": {\"oil\": 1, \"salt\": 2}, \"max\": \"2 %\"}]",
                "\"bounds\": [{\"property\": \"NA\", \"within\": {\"ingredient\": \"salt\"}, \"max\": \"2 %\"}]",
                "\"bounds\": [{\"sum\": [{\"ingredient\": [\"salt\"]}, {\"ingredient\": \"oil\"}], \"max\": \"2 %\"}]",
                "\"stages\": [{\"id\": \"brine\", \"ingredients\": [\"water\", \"salt\"]}]",
                "\"rules\": [{\"whenUsed\": \"salt\", \"min\": \"1 %\"}]",
                "\"rules\": [{\"if\": \"oil\", \"then\": [\"salt\", \"pea\"]}]",
                "\"rules\": [{\"choose\": {\"ingredient\": [\"salt\", \"oil\"]}, \"max\": 2}]",
            })
    void an_ingredient_that_is_named_and_that_no_list_sells_is_told_where_it_is_named(String fields) {
        var place = fields.substring(1, fields.indexOf('"', 1));
        assertThat(kitchen.remarksOn(fields))
                .filteredOn(remark -> remark.contains("No price list sells \"salt\""))
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark).startsWith("/" + place));
    }

    @Test
    void an_ingredient_whose_price_row_was_deleted_is_told_although_nothing_names_it() {
        assertThat(kitchen.remarksOn("\"bounds\": []"))
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark).startsWith("/prices: No price list sells \"salt\""));
    }

    @Test
    void an_ingredient_that_is_kept_out_needs_no_price() {
        assertThat(kitchen.remarksOn("\"avoid\": {\"ingredients\": [\"salt\"]}"))
                .isEmpty();
        assertThat(kitchen.remarksOn("\"only\": [\"pea\", \"oil\", \"water\"]")).isEmpty();
    }

    @Test
    void of_two_prices_for_the_same_goods_it_is_told_which_counts() {
        kitchen.prices("pea,Mill,4,kg", "oil,Mill,2,kg", "water,tap,0,kg", "salt,Mill,1,kg", "pea,Mill,5,kg");
        assertThat(kitchen.remarksOn("\"bounds\": []"))
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark)
                        .contains("\"pea\" from \"Mill\" has 2 prices")
                        .contains("the lowest counts, 4"));
    }

    @Test
    void another_pack_another_supplier_or_goods_that_run_out_are_two_offers() {
        kitchen.file("prices.csv", """
                ingredient,supplier,price,per,pack,available
                pea,Mill,4,kg,5 kg,
                pea,Mill,3,kg,25 kg,
                pea,Shop,4,kg,5 kg,
                oil,Mill,2,kg,,1 kg
                oil,Mill,3,kg,,
                water,tap,0,kg,,
                salt,Mill,1,kg,,
                """);
        assertThat(kitchen.remarksOn("\"bounds\": []")).isEmpty();
    }

    @Test
    void a_supplier_that_is_misspelt_in_the_terms_is_told_in_both_files() {
        kitchen.prices("pea,Mill Lane,4,kg", "oil,Mill Lane,2,kg", "water,tap,0,kg", "salt,Mill Lane,1,kg");
        kitchen.file("suppliers.csv", "supplier,minimumOrder\nMil Lane,100\n");
        assertThat(kitchen.remarksOn("\"bounds\": []"))
                .hasSize(2)
                .anySatisfy(remark -> assertThat(remark)
                        .contains("\"Mill Lane\" has no terms")
                        .contains("Did you mean \"Mil Lane\"?"))
                .anySatisfy(remark -> assertThat(remark)
                        .contains("\"Mil Lane\" sells nothing")
                        .contains("Did you mean \"Mill Lane\"?"));
    }

    @Test
    void a_supplier_of_another_list_in_the_folder_is_not_missed() {
        kitchen.prices("pea,Mill,4,kg", "oil,Mill,2,kg", "water,tap,0,kg", "salt,Mill,1,kg");
        kitchen.file("prices-winter.csv", "ingredient,supplier,price,per\npea,Farm,3,kg\n");
        kitchen.file("suppliers.csv", "supplier,minimumOrder\nMill,100\nFarm,20\n");
        assertThat(kitchen.remarksOn("\"bounds\": []")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"38.7", "387", "39900"})
    void salt_holds_the_sodium_of_salt(String sodium) {
        kitchen.set("", SALT.replace("39300", sodium));
        var run =
                RemarkedKitchen.run("check", folder.resolve("ingredients.json").toString(), "--json");
        assertThat(run.remarks())
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark)
                        .startsWith("/ingredients/0/values/NA: This is called salt")
                        .contains("39,300"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"id\": \"salt\", \"values\": {\"NA\": 38758}}",
                "{\"id\": \"low-sodium salt\", \"values\": {\"NA\": 13000, \"K\": 35000}}",
                "{\"id\": \"salted cabbage\", \"values\": {\"WATER\": 90, \"NA\": 900}}",
                "{\"id\": \"herb salt butter\", \"values\": {\"FAT\": 80, \"NA\": 900}}",
            })
    void what_is_right_of_salts_and_salted_food_is_not_remarked_on(String ingredient) {
        kitchen.set("", ingredient);
        assertThat(RemarkedKitchen.run(
                                "check", folder.resolve("ingredients.json").toString(), "--json")
                        .remarks())
                .isEmpty();
    }

    @Test
    void sodium_chloride_without_its_sodium_is_told() {
        kitchen.set("", "{\"id\": \"brine\", \"values\": {\"WATER\": 80, \"NACL\": 20000, \"NA\": 8}}");
        assertThat(RemarkedKitchen.run(
                                "check", folder.resolve("ingredients.json").toString(), "--json")
                        .remarks())
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark).contains("7868 mg of sodium"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"FIBTG\": 90, \"CHOCDF\": 68}",
                "{\"SUGAR\": 70, \"CHOCDF\": 68}",
                "{\"CHOAVL\": 60, \"FIBTG\": 30, \"CHOCDF\": 68}",
                "{\"FAT\": 10, \"FASAT\": 6, \"FAMS\": 4, \"FAPU\": 3}",
            })
    void parts_above_their_whole_are_a_fault(String values) {
        kitchen.set("", "{\"id\": \"bran\", \"values\": " + values + "}");
        var run =
                RemarkedKitchen.run("check", folder.resolve("ingredients.json").toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("above").contains("1 problem;");
    }

    // Carbohydrate 68 with 3 of it fibre leaves 65 available.
    @Test
    void a_component_that_follows_from_others_is_told_where_others_would_make_it_nothing() {
        kitchen.set("", "{\"id\": \"syrup\", \"values\": {\"CHOCDF\": 68, \"FIBTG\": 3}, \"others\": 0}");
        assertThat(RemarkedKitchen.run(
                                "check", folder.resolve("ingredients.json").toString(), "--json")
                        .remarks())
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark).contains("CHOAVL counts as 65, from CHOCDF less FIBTG"));
    }
}
