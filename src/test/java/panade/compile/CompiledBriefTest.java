package panade.compile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.domain.Brief;
import panade.domain.Side;
import panade.quantity.Quantity;
import panade.testing.DemoBriefs;
import panade.testing.SmallKitchen;

/**
 * A small brief and the model it must give, worked out by hand: 10 kg of bean (2/kg from north, 1/kg from south, of
 * which there are 3 kg), oil (4/kg, half of it usable) and gum (8/kg). Data invented.
 */
class CompiledBriefTest {
    private static final SmallKitchen KITCHEN = new SmallKitchen("""
            {"id": "bean", "values": {"WATER": 50, "FAT": 0}, "others": 0, "allergens": []},
            {"id": "oil", "values": {"WATER": 0, "FAT": 100}, "others": 0, "allergens": [], "usable": "50 %"},
            {"id": "gum", "values": {"WATER": 10, "FAT": 0}, "others": 0, "allergens": [], "maxUse": "5 %"}
            """, """
            bean,north,2,kg,
            bean,south,1,kg,3 kg
            oil,north,4,kg,
            gum,north,8,kg,
            """, "", "");

    /** Shares of the batch; oil is bought twice over, so it costs 8, and 3 kg of beans are three tenths of 10 kg. */
    @Test
    void a_brief_becomes_shares_of_the_batch() {
        assertThat(model(""))
                .containsExactly(
                        "min: 2 bean@mix<north + bean@mix<south + 8 gum@mix<north + 8 oil@mix<north",
                        "batch: bean@mix<north + bean@mix<south + gum@mix<north + oil@mix<north = 1",
                        "/ingredients/2/maxUse/max: gum@mix<north <= 1/20",
                        "bean available south: bean@mix<south <= 3/10");
    }

    @Test
    void each_limit_of_a_bound_is_a_row_and_a_fixed_bound_is_one_equation() {
        assertThat(rows("{\"property\": \"WATER\", \"min\": \"40 %\", \"max\": \"45 %\"}"))
                .containsExactly(
                        "/bounds/0/min: 1/2 bean@mix<north + 1/2 bean@mix<south + 1/10 gum@mix<north >= 2/5",
                        "/bounds/0/max: 1/2 bean@mix<north + 1/2 bean@mix<south + 1/10 gum@mix<north <= 9/20");
        assertThat(rows("{\"property\": \"FAT\", \"min\": \"20 %\", \"max\": \"20 %\"}"))
                .containsExactly("/bounds/0: oil@mix<north = 1/5");
    }

    /** Each bound of the demo in turn, its numbers halved; the model is the one that is compiled from nothing. */
    @Test
    void a_brief_with_one_number_moved_takes_the_other_rows_over() {
        for (var name : DemoBriefs.NAMES) {
            var brief = DemoBriefs.read(name);
            var compiled = BriefCompiler.compile(brief);
            for (var bound : brief.bounds()) {
                var moved = brief.replacing(bound, bound.withLimits(half(bound.min()), half(bound.max())));
                var taken = BriefCompiler.compile(moved, compiled);
                assertThat(taken).isEqualTo(BriefCompiler.compile(moved));
                assertThat(taken.model()).isNotEqualTo(compiled.model());
            }
        }
    }

    private static @Nullable Quantity half(@Nullable Quantity limit) {
        return limit == null
                ? null
                : Quantity.of(limit.number().divide(2).add(BigFraction.of(1, 1000)), limit.unit(), "half");
    }

    /** FAT at most 30 % of WATER: FAT - 0.3 WATER, at most nothing. A weight is a share of 10 kg. */
    @Test
    void a_ratio_is_brought_to_one_side_and_a_weight_to_a_share() {
        assertThat(rows("{\"property\": \"FAT\", \"per\": {\"property\": \"WATER\"}, \"max\": \"30 %\"}"))
                .containsExactly("/bounds/0/max: -3/20 bean@mix<north + -3/20 bean@mix<south + -3/100 gum@mix<north"
                        + " + oil@mix<north <= 0");
        assertThat(rows("{\"ingredient\": \"oil\", \"min\": \"2 kg\"}"))
                .containsExactly("/bounds/0/min: oil@mix<north >= 1/5");
    }

    @Test
    void a_stage_has_columns_of_its_own() {
        var compiled = BriefCompiler.compile(
                brief("\"stages\": [{\"id\": \"fat\", \"title\": \"fat\", \"ingredients\": [\"oil\", \"gum\"]}],", ""));
        assertThat(compiled.model().columns())
                .extracting(column -> column.name())
                .containsExactly("gum@fat<north", "oil@fat<north", "bean@mix<north", "bean@mix<south");
        assertThat(compiled.columnsOf("bean")).containsExactly(2, 3);
        assertThat(compiled.columnsOf(compiled.columns().get(3).offer().id())).containsExactly(3);
        assertThat(compiled.shareOf("bean").dense(4))
                .containsExactly(BigFraction.ZERO, BigFraction.ZERO, BigFraction.ONE, BigFraction.ONE);
    }

    @Test
    void a_row_is_found_by_its_bound_whatever_the_number() {
        var compiled =
                BriefCompiler.compile(brief("", "{\"property\": \"WATER\", \"min\": \"40 %\", \"max\": \"45 %\"}"));
        var bound = ((Limit.OfBound) compiled.rows().get(1)).bound();
        var other = bound.withLimits(bound.min(), null);
        assertThat(compiled.rowOf(new RowId.OfBound(other.id(), Side.MIN))).isEqualTo(1);
        assertThat(compiled.rowOf(new RowId.OfBound(other.id(), Side.MAX))).isEqualTo(2);
        assertThat(compiled.rowOf(new RowId.OfBound(other.id(), Side.FIXED))).isEqualTo(-1);
        assertThat(compiled.rowOf(
                        new RowId.OfOffer(compiled.columns().get(1).offer().id())))
                .isEqualTo(4);
    }

    /** A switch is one if any is used, and where a least use is asked for only if there is that much. */
    @Test
    void a_rule_adds_switches_of_nought_or_one() {
        var brief = brief(
                "\"rules\": [{\"whenUsed\": \"gum\", \"min\": \"2 %\"}," + " {\"neverTogether\": [\"gum\", \"oil\"]}],",
                "");
        var choice = RuleCompiler.compile(brief, BriefCompiler.compile(brief), Extent.ANY);
        assertThat(choice.model().whole()).isEqualTo(Set.of(4, 5));
        assertThat(choice.switches()).isEqualTo(Map.of(4, Set.of("gum"), 5, Set.of("oil")));
        assertThat(ModelText.of(choice.model().relaxed()).subList(4, 10))
                .containsExactly(
                        "column 4: uses gum <= 1",
                        "uses: gum@mix<north + -1 uses gum <= 0",
                        "/rules/0: gum@mix<north + -1/50 uses gum >= 0",
                        "column 5: uses oil <= 1",
                        "uses: oil@mix<north + -1 uses oil <= 0",
                        "/rules/1: uses gum + uses oil <= 1");
    }

    private static List<String> model(String bound) {
        return ModelText.of(BriefCompiler.compile(brief("", bound)).model());
    }

    /** The rows of a bound: what comes between the batch and the ceilings. */
    private static List<String> rows(String bound) {
        return model(bound).stream().filter(line -> line.startsWith("/bounds/")).toList();
    }

    private static Brief brief(String more, String bounds) {
        return new SmallKitchen(KITCHEN.ingredients(), KITCHEN.prices(), bounds, more).brief();
    }
}
