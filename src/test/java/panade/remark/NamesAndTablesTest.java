package panade.remark;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that cooks use for ids and components, and tables as spreadsheet programs save them. */
class NamesAndTablesTest {
    private static final String NAMED_PEA =
            RemarkedKitchen.PEA.replace("\"id\": \"pea\",", "\"id\": \"pea\", \"name\": \"Pea protein, fine\",");

    @TempDir
    private Path folder;

    private RemarkedKitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new RemarkedKitchen(folder);
    }

    @Test
    void a_name_that_one_ingredient_has_stands_for_its_id() {
        kitchen.set("", NAMED_PEA, RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        kitchen.prices(
                "pea protein, fine,Mill,4,kg".replace("pea protein, fine", "\"pea protein, fine\""),
                "oil,Mill,2,kg",
                "water,tap,0,kg");
        var bounds = """
                "bounds": [{"ingredient": "Pea Protein, fine", "min": "10 %"},
                           {"ingredient": {"Pea protein, fine": 1, "oil": 2}, "max": "80 %"},
                           {"sum": [{"ingredient": ["Pea protein, fine"]}, {"ingredient": "oil"}], "min": "30 %"}],
                "only": ["Pea protein, fine", "oil", "water"],
                "stages": [{"id": "first", "ingredients": ["Pea protein, fine"],
                            "bounds": [{"ingredient": "Pea protein, fine", "min": "100 %"}]}],
                "rules": [{"if": "Pea protein, fine", "then": "oil"}]""";
        var brief = kitchen.brief(bounds);
        var run = RemarkedKitchen.run("blend", brief, "--json");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.json().get("blend").get(0).get("ingredient").stringValue())
                .isEqualTo("pea");
        assertThat(RemarkedKitchen.run("swap", brief, "--out", "pea protein, FINE")
                        .status())
                .isEqualTo(4);
        assertThat(RemarkedKitchen.run("trace", brief, "--price", "Pea protein, fine")
                        .status())
                .isZero();
        assertThat(RemarkedKitchen.run("blend", brief, "--without", "Pea protein, fine")
                        .status())
                .isEqualTo(4);
    }

    @Test
    void a_name_that_two_ingredients_have_is_refused_with_their_ids() {
        var other = NAMED_PEA.replace("\"id\": \"pea\"", "\"id\": \"pea-2\"");
        kitchen.set("", NAMED_PEA, other, RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        var run = RemarkedKitchen.run(
                "blend", kitchen.brief("\"bounds\": [{\"ingredient\": \"Pea protein, fine\", \"min\": \"10 %\"}]"));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("Several ingredients are called").contains("\"pea\", \"pea-2\"");
    }

    @ParameterizedTest
    @CsvSource({"protein, PROCNT", "Sodium, NA", "fat, FAT", "water, WATER"})
    void an_everyday_word_stands_for_a_component_where_it_can_mean_no_other(String word, String tagname) {
        var run = RemarkedKitchen.run(
                "blend", kitchen.brief("\"bounds\": [{\"property\": \"" + word + "\", \"max\": \"90 %\"}]"), "--json");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.json().get("bounds").get(0).get("name").stringValue()).isEqualTo(tagname + " max 90 %");
    }

    @ParameterizedTest
    @CsvSource({"salt, 393 mg", "carbohydrate, CHOAVL", "Carbs, CHOCDF"})
    void a_word_that_would_have_to_be_guessed_at_is_refused_with_what_to_write(String word, String advice) {
        var run = RemarkedKitchen.run(
                "blend", kitchen.brief("\"bounds\": [{\"property\": \"" + word + "\", \"max\": \"1 %\"}]"));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages())
                .contains("No property is called \"" + word + "\"")
                .contains(advice);
    }

    @Test
    void a_trait_of_that_name_goes_before_the_everyday_word() {
        kitchen.set(
                "\"fat\": {\"title\": \"how fat it looks\", \"absent\": 3}",
                RemarkedKitchen.PEA,
                RemarkedKitchen.OIL,
                RemarkedKitchen.WATER);
        var run = RemarkedKitchen.run(
                "blend", kitchen.brief("\"bounds\": [{\"property\": \"fat\", \"max\": 3}]"), "--json");
        assertThat(run.json().get("bounds").get(0).get("name").stringValue()).isEqualTo("fat max 3");
    }

    @Test
    void in_the_values_of_an_ingredient_a_word_is_only_a_hint_for_no_unit_stands_beside_it() {
        kitchen.set(
                "", RemarkedKitchen.PEA.replace("\"NA\"", "\"sodium\""), RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        var run =
                RemarkedKitchen.run("check", folder.resolve("ingredients.json").toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("Did you mean \"NA\", in mg/100g?");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ingredient;supplier;price;per;\r\n;;;;\r\npea;Mill;4.00;lb;\r\n;;;;\r\noil;\"Mill; old\";2;kg;\r\nwater;tap;0;kg\r\n;;;;\r\n",
                "ingredient\tsupplier\tprice\tper\npea\tMill\t4.00\tlb\noil\tMill\t2\tkg\t\t\nwater\ttap\t0\tkg\n\n\n",
                "\uFEFFsep=;\r\ningredient;supplier;price;per\r\npea;Mill;4.00;lb\r\noil;Mill;2;kg\r\nwater;tap;0;kg\r\n",
                "\uFEFFingredient,supplier,price,per,,\n,,,,,\npea,Mill,4.00,lb,,\noil,Mill,2,kg,,\n  \nwater,tap,0,kg,,\n,,,,,\n",
            })
    void a_price_list_that_a_spreadsheet_program_saved_is_read(String text) {
        kitchen.file("prices.csv", text);
        var run = RemarkedKitchen.run(
                "blend", kitchen.brief("\"bounds\": [{\"ingredient\": \"pea\", \"min\": \"100 %\"}]"), "--json");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.json().get("cost").get("perLb").doubleValue()).isEqualTo(4);
    }

    @Test
    void suppliers_terms_and_stock_are_read_with_semicolons_as_well() {
        kitchen.file("suppliers.csv", "supplier;minimumOrder;delivery;leadDays;\nMill;100;5;2;\n;;;;\n");
        kitchen.file("stock.csv", "ingredient;amount;bestBefore\noil;1 kg;\n;;\n");
        var run = RemarkedKitchen.run(
                "buy",
                kitchen.brief("\"bounds\": [{\"ingredient\": \"oil\", \"min\": \"50 %\"}]") + "=10kg",
                "--stock",
                folder.resolve("stock.csv").toString(),
                "--json");
        assertThat(run.status()).as(run.messages()).isZero();
        assertThat(run.output()).contains("\"leadDays\" : 2");
    }

    @Test
    void a_decimal_comma_in_such_a_table_is_refused_at_its_place_with_the_number_written_out() {
        kitchen.file("prices.csv", "ingredient;supplier;price;per\r\npea;Mill;4,50;kg\r\n");
        var run = RemarkedKitchen.run("check", folder.resolve("prices.csv").toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("prices.csv:2:10: /0/price").contains("Write it as \"4.50\".");
    }

    /** 4 euros are not 4 dollars: the number alone must not be offered. */
    @Test
    void a_price_in_another_money_is_refused_without_offering_the_bare_number() {
        kitchen.set("", RemarkedKitchen.PEA, RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        kitchen.prices("pea,Mill,\u20ac4.10,kg", "oil,Mill,2,kg", "water,tap,0,kg");
        var run = RemarkedKitchen.run("check", kitchen.brief("\"currency\": \"USD\", \"target\": \"\u20ac3.90/lb\""));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("and prices are in USD").doesNotContain("Write it as");
    }

    @Test
    void a_row_with_something_behind_the_last_column_is_refused() {
        kitchen.file("prices.csv", "ingredient,supplier,price,per\npea,Mill,4,50,kg\n");
        assertThat(RemarkedKitchen.run("check", folder.resolve("prices.csv").toString())
                        .messages())
                .contains("The row has 5 cells where the header has 4");
    }

    @Test
    void a_long_price_list_is_read_in_seconds() {
        var rows = IntStream.range(0, 40_000)
                .mapToObj(i -> "pea,Mill " + i + "," + (4 + i % 7) + ",kg")
                .collect(Collectors.joining("\n", "ingredient,supplier,price,per\n", "\n"));
        var file = kitchen.file("long.csv", rows).toString();
        assertTimeout(
                ofSeconds(8),
                () -> assertThat(RemarkedKitchen.run("check", file).status()).isZero());
    }

    @Test
    void many_misspelt_names_are_told_in_seconds() {
        var long_ = "a-very-long-name-of-an-ingredient-that-goes-on-and-on-".repeat(40);
        var set = IntStream.range(0, 2_000)
                .mapToObj(i -> "{\"id\": \"" + long_ + i + "\", \"values\": {\"WATER\": 100}, \"others\": 0}")
                .toArray(String[]::new);
        kitchen.set("", set);
        var rows = IntStream.range(0, 500)
                .mapToObj(i -> long_ + "x" + i + ",Mill,4,kg")
                .toArray(String[]::new);
        kitchen.prices(rows);
        var brief = kitchen.brief("\"bounds\": []");
        assertTimeout(
                ofSeconds(10),
                () -> assertThat(RemarkedKitchen.run("check", brief).status()).isEqualTo(3));
    }

    // Each level is the sum of the one below it, twice: 2 to the 40th ways lead to the first.
    @Test
    void sums_of_sums_are_added_up_once_each() {
        var traits = IntStream.range(1, 40)
                .mapToObj(i -> {
                    var sum = "{\"sum\": {\"t" + (i - 1) + "\": 1, \"u" + (i - 1) + "\": 1}}";
                    return "\"t" + i + "\": " + sum + ", \"u" + i + "\": " + sum;
                })
                .collect(Collectors.joining(", ", "\"t0\": {\"absent\": 1}, \"u0\": {\"absent\": 1}, ", ""));
        kitchen.set(traits, RemarkedKitchen.PEA, RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        var brief = kitchen.brief("\"bounds\": [{\"property\": \"t39\", \"max\": 549755813888}]");
        assertTimeout(
                ofSeconds(10),
                () -> assertThat(RemarkedKitchen.run("blend", brief).status()).isZero());
    }

    @Test
    void a_file_that_nobody_wrote_is_refused() {
        var run = assertTimeout(ofSeconds(10), () -> RemarkedKitchen.run("check", "/dev/zero"));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("The file is larger than 50 MB");
    }

    @Test
    void a_row_of_thousands_of_briefs_is_refused() {
        kitchen.brief("\"bounds\": []");
        kitchen.file("b0.json", "{\"basedOn\": \"brief.json\"}");
        IntStream.range(1, 3_000)
                .forEach(i -> kitchen.file("b" + i + ".json", "{\"basedOn\": \"b" + (i - 1) + ".json\"}"));
        var run = RemarkedKitchen.run("blend", folder.resolve("b2999.json").toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("brief number 50 in a row");
        assertThat(RemarkedKitchen.run("blend", folder.resolve("b40.json").toString())
                        .status())
                .isZero();
    }
}
