package panade.buy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.pantry.IngredientSet;
import panade.quantity.Decimal;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The invented demo's two products over four weeks, as far as a short search gets; checked from what is printed. */
class WeeksTest {
    private static final BigDecimal HAIR = new BigDecimal("0.0001");
    private static final List<String> ASKED = List.of(
            "buy",
            "constraints/dumpling-filling.json=240lb",
            "constraints/skewer-mince.json=160lb",
            "--periods",
            "ingredient-sets/netherpleat/four-weeks.json",
            "--seconds",
            "3");
    /** What the schedule says is made of each product. */
    private static final List<List<Integer>> POUNDS =
            List.of(List.of(60, 40), List.of(60, 40), List.of(80, 20), List.of(40, 60));
    /** The international pound (NIST Handbook 44, appendix C). */
    private static final BigDecimal POUND = new BigDecimal("0.45359237");

    private static final IngredientSet SET = set();
    private static JsonNode frozen = JsonMapper.shared().createObjectNode();

    @BeforeAll
    static void plan() {
        frozen = JsonMapper.shared().readTree(run(Stream.of("--json"))).path("frozen");
    }

    @Test
    void four_weeks_are_planned_with_their_blends_proved() {
        assertThat(frozen.path("periods")).hasSize(4);
        assertThat(frozen.path("finished").asBoolean()).isTrue();
    }

    @Test
    void what_is_left_one_week_is_there_the_next() {
        var carried = new HashMap<String, BigDecimal>();
        for (int t = 0; t < POUNDS.size(); t++) {
            var week = frozen.path("periods").path(t);
            var bought = bought(week);
            var used = used(week, POUNDS.get(t));
            for (var goods : week.path("store")) {
                var id = goods.path("ingredient").asString();
                var there = carried.getOrDefault(id, BigDecimal.ZERO).add(bought.getOrDefault(id, BigDecimal.ZERO));
                var gone = used.getOrDefault(id, BigDecimal.ZERO)
                        .add(kilograms(goods, "wasted"))
                        .add(kilograms(goods, "left"));
                assertThat(there.subtract(gone).abs()).as(id).isLessThan(HAIR);
                carried.put(id, kilograms(goods, "left"));
            }
        }
    }

    @Test
    void scallions_of_one_week_are_used_up_or_thrown_away_the_next() {
        BigDecimal left = BigDecimal.ZERO;
        for (var week : frozen.path("periods")) {
            var goods = store(week, "scallion");
            assertThat(left).isLessThanOrEqualTo(kilograms(goods, "used").add(HAIR));
            left = kilograms(goods, "left");
        }
    }

    @Test
    void goods_past_their_date_are_not_counted_on_and_the_next_to_go_come_first(@TempDir Path folder)
            throws IOException {
        var stock = Files.writeString(
                folder.resolve("stock.csv"),
                "ingredient,amount,bestBefore\nshea-fat,30 kg,2999-01-31\ncoconut-fat,8 kg,2001-02-03\n");
        var text = run(Stream.of("--stock", stock.toString(), "--leftover-worth", "scallion=0%"));
        assertThat(text)
                .contains("17.64 lb of ", "best before 2001-02-03: that day is past, so it is not counted on.")
                .contains("best before 2999-01-31: use it by then")
                .contains("are counted at 0 %.");
    }

    @Test
    void periods_and_stock_lists_can_be_checked_on_their_own(@TempDir Path folder) throws IOException {
        var stock = Files.writeString(
                folder.resolve("stock.csv"), "ingredient,amount,bestBefore\nshea-fat,30 kg,2030-13-01\n");
        var run = CommandRun.of("check", "ingredient-sets/netherpleat/four-weeks.json", stock.toString());
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages()).contains("\"2030-13-01\" is not a date").doesNotContain("four-weeks");
    }

    @Test
    void a_date_that_is_none_is_told(@TempDir Path folder) throws IOException {
        var stock = Files.writeString(folder.resolve("stock.csv"), "ingredient,amount,bestBefore\nshea-fat,3 kg,May\n");
        var run = CommandRun.of(Stream.concat(ASKED.stream(), Stream.of("--stock", stock.toString()))
                .toArray(String[]::new));
        assertThat(run.status()).isEqualTo(3);
        assertThat(run.messages())
                .contains("stock.csv:2:")
                .contains("\"May\" is not a date")
                .contains("2026-12-31");
    }

    private static String run(Stream<String> more) {
        var run = CommandRun.of(Stream.concat(ASKED.stream(), more).toArray(String[]::new));
        assertThat(run.status()).as(run.messages()).isIn(0, 4);
        return run.output();
    }

    private static Map<String, BigDecimal> bought(JsonNode week) {
        var bought = new HashMap<String, BigDecimal>();
        for (var line : week.path("lines")) {
            bought.merge(line.path("ingredient").asString(), kilograms(line, "kilograms"), BigDecimal::add);
        }
        return bought;
    }

    /** Worked out from the printed shares and the pounds that are made, not from what is printed as used. */
    private static Map<String, BigDecimal> used(JsonNode week, List<Integer> pounds) {
        var used = new HashMap<String, BigDecimal>();
        for (int p = 0; p < pounds.size(); p++) {
            var made = POUND.multiply(BigDecimal.valueOf(pounds.get(p)));
            for (var line : week.path("blends").path(p)) {
                var id = line.path("ingredient").asString();
                var usable = Decimal.round(SET.ingredient(id).usable(), 12);
                used.merge(
                        id,
                        made.multiply(kilograms(line, "share")).divide(usable, MathContext.DECIMAL64),
                        BigDecimal::add);
            }
        }
        return used;
    }

    private static IngredientSet set() {
        var brief = Documents.readBrief(
                Path.of("constraints", "dumpling-filling.json"), new Overrides(List.of(), null, List.of(), null));
        return ((Reading.Accepted<Brief>) brief).value().set();
    }

    private static JsonNode store(JsonNode week, String id) {
        return week.path("store")
                .valueStream()
                .filter(goods -> goods.path("ingredient").asString().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static BigDecimal kilograms(JsonNode node, String name) {
        return node.path(name).decimalValue();
    }
}
