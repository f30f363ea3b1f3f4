package panade.remark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What documents mean where they could be read in two ways. */
class DocumentRulesTest {
    @TempDir
    private Path folder;

    private RemarkedKitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new RemarkedKitchen(folder);
    }

    @Test
    void a_bound_is_told_where_it_stands_in_its_own_document() {
        var parent = kitchen.brief("""
                "bounds": [{"name": "protein", "property": "PROCNT", "min": "8 %"},
                           {"name": "oil", "ingredient": "oil", "min": "10 %"}]""");
        var child = kitchen.file("child.json", """
                {"basedOn": "brief.json", "bounds": [
                  {"name": "salt", "property": "NA", "max": "400 mg/100g"},
                  {"name": "oil", "ingredient": "oil", "min": "20 %"}]}""").toString();
        var bounds = RemarkedKitchen.run("blend", child, "--json").json().get("bounds");
        assertThat(bounds).hasSize(3);
        for (var bound : bounds) {
            var name = bound.get("name").stringValue();
            boolean inherited = name.equals("protein");
            assertThat(bound.get("file").stringValue()).isEqualTo(inherited ? parent : child);
            assertThat(bound.get("path").stringValue()).isEqualTo(name.equals("oil") ? "/bounds/1" : "/bounds/0");
        }
    }

    @Test
    void a_path_on_the_command_line_is_that_of_the_brief_named_there() {
        kitchen.brief("\"bounds\": [{\"name\": \"protein\", \"property\": \"PROCNT\", \"min\": \"8 %\"}]");
        var child = kitchen.file("child.json", """
                {"basedOn": "brief.json", "bounds": [{"name": "more oil", "ingredient": "oil", "min": "20 %"}]}""").toString();
        var curve = RemarkedKitchen.run("trace", child, "--bound", "/bounds/0", "--json")
                .json();
        assertThat(curve.get("of").get("bound").stringValue()).isEqualTo("more oil");
    }

    // 1 kg of pea with kinds protein and legume, 60 % of it: weights 1 and 1 make 120 %, a list makes 60 %.
    @ParameterizedTest
    @ValueSource(strings = {"{\"protein\": 1, \"legume\": 1}", "{\"protein\": 1, \"legume\": 1.0}"})
    void weights_of_kinds_add_up_also_when_each_is_one(String weights) {
        var pea = RemarkedKitchen.PEA.replace("[\"protein\"]", "[\"protein\", \"legume\"]");
        kitchen.set("", pea, RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        var value = "\"kind\": %s, \"min\": \"60 %%\"";
        assertThat(peaIn(value.formatted(weights))).isEqualTo(0.3);
        assertThat(peaIn(value.formatted("[\"protein\", \"legume\"]"))).isEqualTo(0.6);
    }

    private double peaIn(String bound) {
        var run = RemarkedKitchen.run("blend", kitchen.brief("\"bounds\": [{" + bound + "}]"), "--json");
        var share = 0.0;
        for (var line : run.json().get("blend")) {
            share += line.get("ingredient").stringValue().equals("pea")
                    ? line.get("share").doubleValue()
                    : 0;
        }
        return share;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"maxIngredients\": 4294967297",
                "\"rules\": [{\"choose\": {\"ingredient\": [\"pea\", \"oil\"]}, \"min\": 4294967297}]",
                "\"rules\": [{\"choose\": {\"ingredient\": [\"pea\", \"oil\"]}, \"max\": 4294967297}]",
                "\"rules\": [{\"choose\": {\"ingredient\": [\"pea\", \"oil\"]}, \"max\": 1.5}]",
            })
    void a_number_that_nobody_counts_to_is_refused_and_not_cut(String field) {
        var run = RemarkedKitchen.run("blend", kitchen.brief(field));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("Expected a whole number, ").contains("to 1000000");
    }

    @Test
    void a_bound_without_a_name_is_found_by_what_it_alone_measures() {
        var sodium = "{\"property\": \"NA\", \"max\": \"420 mg/100g\"}";
        var fat = "{\"name\": \"lean\", \"property\": \"FAT\", \"max\": \"30 %\"}";
        var one = kitchen.brief("\"bounds\": [" + sodium + ", " + fat + "]");
        assertThat(RemarkedKitchen.run("trace", one, "--bound", "sodium").messages())
                .isEmpty();
        var none = RemarkedKitchen.run("trace", one, "--bound", "iron");
        assertThat(none.status()).isEqualTo(3);
        assertThat(none.messages()).contains("its bounds: \"NA max 420 mg/100g\", \"lean\".");
        var twice = kitchen.brief("\"bounds\": [" + sodium + ", {\"property\": \"NA\", \"min\": \"10 mg/100g\"}]");
        assertThat(RemarkedKitchen.run("trace", twice, "--bound", "sodium").messages())
                .contains("No bound is called \"sodium\"");
    }

    @Test
    void a_supplier_has_one_row_of_terms() {
        kitchen.file("suppliers.csv", "supplier,minimumOrder,delivery,leadDays\nMill,100,5,2\nMill,0,0,1\n");
        var run = RemarkedKitchen.run("buy", kitchen.brief("\"bounds\": []") + "=20kg");
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("suppliers.csv:3:1").contains("\"Mill\" has terms already");
        assertThat(RemarkedKitchen.run("check", folder.resolve("suppliers.csv").toString())
                        .status())
                .isEqualTo(3);
    }

    @Test
    void a_brief_is_checked_with_the_terms_that_its_goods_are_ordered_on() {
        kitchen.file(
                "suppliers.csv", "supplier,minimumOrder,delivery,leadDays\nMill,100,5,1.7\ntap,0,0,1\ntap,0,0,1\n");
        var brief = kitchen.brief("\"bounds\": []");
        var run = RemarkedKitchen.run("check", brief);
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages())
                .contains("suppliers.csv:2:", "\"1.7\" is not a number of days")
                .contains("suppliers.csv:4:1", "\"tap\" has terms already");
        kitchen.file("suppliers.csv", "supplier,minimumOrder,delivery,leadDays\nMill,100,5,2\ntap,0,0,1\n");
        assertThat(RemarkedKitchen.run("check", brief).status()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1.7", "-1", "99999999999", "soon"})
    void days_to_wait_are_whole_days(String days) {
        var file = kitchen.file("suppliers.csv", "supplier,leadDays\nMill," + days + "\n");
        var run = RemarkedKitchen.run("check", file.toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("\"" + days + "\" is not a number of days");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"weighing\": \"20,5 lb\"", "\"serving\": \"68,5 g\"", "\"target\": \"3,90/kg\""})
    void a_decimal_comma_is_refused_with_the_number_written_out(String field) {
        var run = RemarkedKitchen.run("blend", kitchen.brief(field));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("Write it as \"").contains(".").doesNotContain("Write it as \"20,5");
    }

    @Test
    void a_decimal_comma_outside_quotes_is_told_as_such() {
        var run = RemarkedKitchen.run("blend", kitchen.brief("\"bounds\": [{\"property\": \"NA\", \"max\": 68,5}]"));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("Decimals have a point here: write 68.5.");
    }

    @Test
    void a_price_in_the_list_may_bear_the_sign_of_the_currency_that_is_stated() {
        kitchen.prices("pea,Mill,$4,LBS", "oil,Mill,2,Kilo", "water,tap,0,kg");
        var brief = "\"bounds\": [{\"ingredient\": \"pea\", \"min\": \"100 %\"}]";
        var stated = RemarkedKitchen.run("blend", kitchen.brief("\"currency\": \"USD\", " + brief), "--json");
        assertThat(stated.json().get("cost").get("perLb").doubleValue()).isEqualTo(4);
        var unstated = RemarkedKitchen.run("blend", kitchen.brief(brief));
        assertThat(unstated.status()).isEqualTo(3);
        assertThat(unstated.messages())
                .contains("\"$4\" bears a sign of money, and nothing says which currency prices are in")
                .contains("Expected the currency in the brief");
    }

    @Test
    void numbers_on_the_command_line_must_be_possible() {
        var brief =
                kitchen.brief("\"currency\": \"USD\", \"bounds\": [{\"name\": \"protein\", \"property\": \"PROCNT\","
                        + " \"min\": \"10 %\"}]");
        assertThat(RemarkedKitchen.run("trace", brief, "--price", "pea", "--from=-1/lb")
                        .status())
                .isEqualTo(2);
        assertThat(RemarkedKitchen.run("trace", brief, "--price", "pea", "--to", "$9/lb")
                        .status())
                .isZero();
        assertThat(RemarkedKitchen.run("trace", brief, "--bound", "protein", "--from=-1 %")
                        .status())
                .isEqualTo(2);
        assertThat(RemarkedKitchen.run("trace", brief, "--bound", "protein", "--to", "120 %")
                        .status())
                .isEqualTo(2);
        assertThat(RemarkedKitchen.run("blend", brief, "--target", "$3/Pound").status())
                .isZero();
        var comma = RemarkedKitchen.run("batch", brief, "--weighing", "0,5 g");
        assertThat(comma.status()).isEqualTo(2);
        assertThat(comma.messages()).contains("Write it as \"0.5 g\".");
    }

    @Test
    void within_is_explained_as_it_is_counted() {
        var words = RemarkedKitchen.run("--explain", "within").output().replaceAll("\\s+", " ");
        assertThat(words)
                .contains("still measures it over the whole batch")
                .contains("say \"per\" with the same words")
                .doesNotContain("whatever else is in the bowl");
    }

    // Two quotes of one supplier are alternatives there, and one supplier's two prices in a brief that pools them.
    @Test
    void lists_that_are_compared_are_no_second_prices_of_each_other() {
        var other = kitchen.file("winter.csv", """
                ingredient,supplier,price,per
                pea,Mill,5,kg
                oil,Mill,3,kg
                water,tap,0,kg
                """);
        var brief = kitchen.brief("\"bounds\": [{\"property\": \"PROCNT\", \"min\": \"10 %\"}]");
        var prices = folder.resolve("prices.csv").toString();
        var compared = RemarkedKitchen.run("quotes", brief, "--prices", prices, "--prices", other.toString(), "--json");
        assertThat(compared.status()).as(compared.messages()).isZero();
        assertThat(compared.remarks()).isEmpty();
        var pooled = RemarkedKitchen.run("blend", brief, "--prices", prices, "--prices", other.toString(), "--json");
        assertThat(pooled.remarks())
                .hasSize(3)
                .anySatisfy(remark -> assertThat(remark).contains("\"pea\" from \"Mill\" has 2 prices"));
    }
}
