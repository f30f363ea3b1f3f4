package panade.report.question;

import static org.assertj.core.api.Assertions.assertThat;
import static panade.testing.Loaves.number;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.render.TextRenderer;
import panade.result.ReachResult;
import panade.result.ReachResult.Goal;
import panade.result.ReachResult.Move;
import panade.result.ReachResult.PriceMove;
import panade.result.ReachResult.PropertyRange;
import panade.testing.Loaves;

/** What is told of a loaf at 2.20462262 a kilogram, one a pound, and of targets around it. Invented. */
class ReachReportTest {
    @Test
    void a_target_above_the_cost_is_met_and_what_the_money_buys_is_told() {
        var ranges = List.of(new PropertyRange("fibre", number("5"), number("3"), number("8.25"), "%"));
        assertThat(words(result("2.3", List.of(), List.of(), List.of(), ranges)))
                .contains("loaf: can it cost 1.0433/lb?", "Yes: the cheapest blend costs 1.0000 USD/lb")
                .contains("0.0433 USD/lb below the target of 1.0433.")
                .containsPattern("fibre +5 +3 +8.25 +%")
                .doesNotContain("One bound alone");
    }

    @Test
    void moves_that_are_enough_come_first_and_the_easiest_of_them_before() {
        var far = move("salt", "2", "1");
        var near = move("fibre", "6", "5.4");
        var never = move("water", "40", null);
        assertThat(words(result("2.1", List.of(never, far, near), List.of(), List.of(), List.of())))
                .contains("Not as it stands:")
                .containsSubsequence(
                        "fibre", "6 %", "5.4 %", "salt", "2 %", "1 %", "water", "can't alone, brings 0.9979")
                .contains("No two bounds together were found that need less than one alone.");
    }

    @Test
    void where_no_move_is_enough_the_pair_that_is_missing_is_told_in_other_words() {
        assertThat(words(result("2.1", List.of(move("water", "40", null)), List.of(), List.of(), List.of())))
                .contains("No two of the bounds that get furthest alone are enough together.");
    }

    @Test
    void a_pair_is_told_with_the_cost_that_it_brings() {
        var pair = List.of(move("salt", "2", "1.5"), move("fibre", "6", "5.7"));
        assertThat(words(result("2.1", List.of(), pair, List.of(), List.of())))
                .contains("salt to 1.5 % and fibre to 5.7 %, then 0.9979 USD/lb.");
    }

    @Test
    void a_price_that_is_enough_is_rounded_down_and_one_that_never_is_says_so() {
        var oats = new PriceMove("oats", "Mill", number("3"), number("1.99999"), number("2.1"), "Oats");
        var bran = new PriceMove("bran", "Mill", number("1"), null, number("2.2"), "Bran");
        assertThat(words(result("2.1", List.of(), List.of(), List.of(bran, oats), List.of())))
                .containsPattern("Oats +1.3608 +0.9071")
                .containsPattern("Bran +0.4536 +not even free: brings 0.9979");
    }

    private static Move move(String name, String from, @Nullable String to) {
        return new Move(
                "/bounds/0/max",
                "loaf.json",
                name,
                number(from),
                to == null ? null : number(to),
                "%",
                null,
                null,
                number("2.2"),
                null);
    }

    private static ReachResult result(
            String target, List<Move> moves, List<Move> pair, List<PriceMove> prices, List<PropertyRange> ranges) {
        var best = Loaves.costing("2.20462262");
        var gap = best.cost().perKg().subtract(number(target));
        return new ReachResult(
                new Goal(number(target)),
                gap.signum() <= 0,
                gap,
                best,
                null,
                moves,
                pair,
                null,
                prices,
                List.of(),
                List.of(),
                List.of(),
                null,
                ranges);
    }

    private static String words(ReachResult result) {
        return TextRenderer.render(ReachReport.of(result)).replaceAll("[ \n]+", " ");
    }
}
