package panade.remark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a whole brief says that may not be meant, and limits a serving. */
class BriefRemarksTest {
    @TempDir
    private Path folder;

    private RemarkedKitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new RemarkedKitchen(folder);
    }

    private List<String> remarksOnBound(String bound) {
        return kitchen.remarksOn("\"bounds\": [" + bound + "]");
    }

    // 350 mg in 10 kg are 3.5 mg in 100 g.
    @ParameterizedTest
    @ValueSource(strings = {"min", "max"})
    void a_little_sodium_asked_of_the_whole_batch_is_told_with_what_it_is_in_100_g(String side) {
        assertThat(remarksOnBound("{\"property\": \"NA\", \"" + side + "\": \"350 mg\"}"))
                .anySatisfy(remark -> assertThat(remark)
                        .startsWith("/bounds/0: \"350 mg\" of NA is asked of the whole batch of 10 kg")
                        .contains("that is 3.5 mg/100g")
                        .contains("\"350 mg/serving\""));
    }

    @Test
    void a_weight_of_a_component_that_a_batch_can_hold_is_not_remarked_on() {
        assertThat(remarksOnBound("{\"property\": \"PROCNT\", \"min\": \"1 kg\"}"))
                .isEmpty();
        assertThat(remarksOnBound("{\"ingredient\": \"oil\", \"min\": \"5 g\"}"))
                .isEmpty();
    }

    // Pea holds 500 mg in 100 g, so 350 mg in a serving of 100 g are 70 % pea.
    @Test
    void a_limit_a_serving_is_kept_in_each_serving() {
        var brief = kitchen.brief(
                "\"serving\": \"100 g\", \"bounds\": [{\"property\": \"NA\", \"min\": \"350 mg/serving\"}]");
        var run = RemarkedKitchen.run("blend", brief, "--json");
        var bound = run.json().get("bounds").get(0);
        assertThat(bound.get("unit").stringValue()).isEqualTo("mg/serving");
        assertThat(bound.get("value").doubleValue()).isEqualTo(350);
        for (var line : run.json().get("blend")) {
            if (line.get("ingredient").stringValue().equals("pea")) {
                assertThat(line.get("share").doubleValue()).isEqualTo(0.7);
            }
        }
    }

    @Test
    void a_serving_of_another_size_asks_for_another_share() {
        var brief = kitchen.brief(
                "\"serving\": \"200 g\", \"bounds\": [{\"ingredient\": \"oil\", \"min\": \"1 oz/serving\"}]");
        var bound = RemarkedKitchen.run("blend", brief, "--json")
                .json()
                .get("bounds")
                .get(0);
        assertThat(bound.get("value").doubleValue()).isEqualTo(1);
        var blend = RemarkedKitchen.run("blend", brief, "--json").json().get("blend");
        for (var line : blend) {
            boolean isOil = line.get("ingredient").stringValue().equals("oil");
            assertThat(line.get("share").doubleValue()).isEqualTo(isOil ? 0.141747615625 : 0.858252384375);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"bounds\": [{\"property\": \"NA\", \"max\": \"350 mg/serving\"}]",
                "\"serving\": \"100 g\", \"bounds\": [{\"property\": \"NA\", \"per\": {\"property\": \"FAT\"}, \"max\": \"3 mg/serving\"}]",
                "\"serving\": \"100 g\", \"bounds\": [{\"property\": \"NA\", \"max\": \"3,5 mg/serving\"}]",
                "\"serving\": \"100 g\", \"bounds\": [{\"property\": \"NA\", \"max\": \"3 % /serving\"}]",
                "\"serving\": \"100 g\", \"stages\": [{\"id\": \"a\", \"ingredients\": [\"oil\"], \"bounds\": [{\"property\": \"FAT\","
                        + " \"max\": \"3 g/serving\"}]}]",
            })
    void a_limit_a_serving_needs_a_serving_and_the_whole_batch(String fields) {
        var run = RemarkedKitchen.run("blend", kitchen.brief(fields));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("a limit a serving").contains("1 problem;");
    }

    // Pea scores 8 and soft 2 within the kind; at most 40 % of the batch is of the kind, so it adds 0 to 3.2.
    @Test
    void a_score_within_a_part_is_told_with_what_both_forms_can_reach() {
        kitchen.set(
                "\"bite\": {\"title\": \"chew\", \"absent\": 0}",
                RemarkedKitchen.PEA.replace("\"NA\": 500", "\"NA\": 500, \"bite\": 8"),
                RemarkedKitchen.PEA.replace("\"pea\"", "\"soft\"").replace("\"NA\": 500", "\"NA\": 500, \"bite\": 2"),
                RemarkedKitchen.OIL,
                RemarkedKitchen.WATER);
        kitchen.prices("pea,Mill,4,kg", "soft,Mill,3,kg", "oil,Mill,2,kg", "water,tap,0,kg");
        var kind = "{\"kind\": \"protein\", \"min\": \"10 %\", \"max\": \"40 %\"}";
        var within = "\"property\": \"bite\", \"within\": {\"kind\": \"protein\"}";
        assertThat(remarksOnBound(kind + ", {" + within + ", \"max\": 5.2}"))
                .anySatisfy(remark -> assertThat(remark)
                        .startsWith("/bounds/1: \"bite\" within a part is measured over the whole batch")
                        .contains("from 0.2 to 3.2. Where the mean")
                        .contains("from 2 to 8."));
        assertThat(remarksOnBound(kind + ", {" + within + ", \"per\": {\"kind\": \"protein\"}, \"max\": 5.2}"))
                .isEmpty();
        assertThat(remarksOnBound("{\"property\": \"bite\", \"max\": 5.2}")).isEmpty();
    }

    // No ingredient holds more than 100 g of fat in 100 g, and pea's 500 mg are the most sodium there is.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"property\": \"NA\", \"max\": \"500 mg/100g\"}",
                "{\"property\": \"NA\", \"min\": \"0 mg/100g\"}",
                "{\"ingredient\": \"oil\", \"max\": \"10.1 kg\"}",
                "{\"property\": \"PROCNT\", \"per\": {\"kind\": \"protein\"}, \"min\": \"80 %\"}",
                "{\"sum\": [{\"ingredient\": \"oil\"}, {\"ingredient\": \"water\"}, {\"ingredient\": \"pea\"}], \"min\": \"99 %\"}",
            })
    void a_bound_that_no_blend_can_miss_is_told(String bound) {
        assertThat(remarksOnBound(bound))
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark).startsWith("/bounds/0: No blend can miss"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"property\": \"NA\", \"max\": \"499 mg/100g\"}",
                "{\"ingredient\": \"oil\", \"max\": \"9.9 kg\"}",
                "{\"property\": \"FAT\", \"min\": \"1 %\", \"max\": \"90 %\"}",
            })
    void a_bound_that_a_blend_can_miss_is_not_remarked_on(String bound) {
        assertThat(remarksOnBound(bound)).isEmpty();
    }

    @Test
    void a_bound_per_something_that_cannot_be_there_measures_nothing() {
        var fields =
                "\"bounds\": [{\"name\": \"chew\", \"property\": \"FAT\", \"per\": {\"kind\": \"protein\"}, \"max\": \"5 %\"}]";
        var brief = kitchen.brief(fields);
        assertThat(RemarkedKitchen.run("blend", brief, "--without", "pea", "--json")
                        .remarks())
                .hasSize(1)
                .allSatisfy(remark ->
                        assertThat(remark).startsWith("/bounds/0: \"chew\" measures nothing: there can be no protein"));
        assertThat(RemarkedKitchen.run("blend", brief, "--json").remarks())
                .noneMatch(remark -> remark.contains("nothing:"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"at most 2 %", "Use level up to 2%", "max. 2 % of the mince", "no more than 2.0 %"})
    void a_ceiling_above_the_suppliers_note_is_told(String note) {
        kitchen.set("", ceiling(note, "\"3 %\""), RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        assertThat(remarksOnBound("{\"ingredient\": \"oil\", \"min\": \"10 %\"}"))
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark)
                        .startsWith("/ingredients/0: The note of \"pea\"")
                        .contains("\"maxUse\" allows 3 %"));
        kitchen.set("", ceiling(note, "\"2 %\""), RemarkedKitchen.OIL, RemarkedKitchen.WATER);
        assertThat(remarksOnBound("{\"ingredient\": \"oil\", \"min\": \"10 %\"}"))
                .isEmpty();
    }

    private static String ceiling(String note, String maxUse) {
        return RemarkedKitchen.PEA.replace(
                "\"others\": 0", "\"others\": 0, \"note\": \"" + note + "\", \"maxUse\": " + maxUse);
    }

    // 1 g of pea holds 2 g of water. Water costs nothing, so the cheapest stage is as wet as it may be.
    @Test
    void a_stage_that_is_as_wet_as_its_carriers_can_be_is_told() {
        kitchen.set(
                "\"soak\": {\"unit\": \"g/g\", \"absent\": 0}",
                RemarkedKitchen.PEA.replace("\"NA\": 500", "\"NA\": 500, \"soak\": 2"),
                RemarkedKitchen.OIL,
                RemarkedKitchen.WATER);
        var stage = """
                "stages": [{"id": "soak", "ingredients": ["pea", "water"], "share": {"min": "50 %%"},
                  "bounds": [{"name": "does not weep", "ingredient": "water", "per": {"property": "soak"}, "max": %s}]}],
                "bounds": [{"property": "PROCNT", "min": "%s"}]""";
        assertThat(kitchen.remarksOn(stage.formatted("1", "10 %")))
                .hasSize(1)
                .allSatisfy(remark -> assertThat(remark)
                        .startsWith("/stages/0/bounds/0: In the cheapest blend all that carries water"));
        assertThat(kitchen.remarksOn(stage.formatted("1", "70 %"))).isEmpty();
    }

    // What an ingredient says of itself goes before what is assumed of any: 500 mg from 10 % pea make 50, not 140.
    @Test
    void others_being_nothing_goes_before_what_is_assumed() {
        var brief = kitchen.brief("\"assume\": {\"NA\": 100}, \"bounds\": [{\"ingredient\": \"pea\", \"min\": \"10 %\","
                + " \"max\": \"10 %\"}, {\"name\": \"sodium\", \"property\": \"NA\", \"max\": \"400 mg/100g\"}]");
        for (var bound : RemarkedKitchen.run("blend", brief, "--json").json().get("bounds")) {
            if (bound.get("name").stringValue().equals("sodium")) {
                assertThat(bound.get("value").doubleValue()).isEqualTo(50);
            }
        }
    }
}
