package panade.report.plate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.domain.Side;
import panade.quantity.Decimal;
import panade.render.TextRenderer;
import panade.result.ShareLine;
import panade.result.StudyResult;
import panade.result.StudyResult.Bound;
import panade.result.StudyResult.Broken;
import panade.result.StudyResult.Certificate;
import panade.result.StudyResult.Compositions;
import panade.result.StudyResult.Cost;
import panade.result.StudyResult.Kept;
import panade.result.StudyResult.Level;
import panade.result.StudyResult.Price;
import panade.result.StudyResult.Safest;
import panade.result.StudyResult.Target;
import panade.result.StudyResult.Use;

/** The words of a study, from a result made by hand. */
class StudyReportTest {
    private static final BigFraction POUND = Decimal.of("0.45359237");

    @Test
    void costs_are_told_per_pound() {
        assertThat(text(study(null, 0, true)))
                .contains(
                        "between 2.0000 and 4.0000 USD/lb, nine times in ten between 1.0000 and 5.0000. Today: 3.0000.")
                .contains("The target of 2.5000 USD/lb is met in 250 of 1,000 draws (25.0 %)");
    }

    @Test
    void a_draw_that_disagrees_is_cried_out() {
        assertThat(text(study(null, 0, true))).contains("and all agree.").doesNotContain("DISAGREE");
        assertThat(text(study(null, 2, true))).contains("and 2 DISAGREE").doesNotContain("and all agree.");
    }

    @Test
    void a_safest_blend_other_than_todays_is_told_by_its_shares_over_all_lines() {
        assertThat(text(study(null, 0, true))).contains("it is also the safest of the 4 blends");
        assertThat(text(study(null, 0, false)))
                .contains("safest of the 4 blends that were best most often: 0.1000 USD/lb above")
                .contains("It is Bran 60.00 %, Lard 40.00 %.");
    }

    @Test
    void prices_that_hardly_matter_are_left_out() {
        assertThat(text(study(null, 0, true)))
                .containsPattern("Lard +Ann +99.0")
                .doesNotContain("Bob");
    }

    @Test
    void spreads_that_were_not_drawn_are_told() {
        assertThat(text(study(null, 0, true))).contains("its spreads were not drawn");
        assertThat(text(study(compositions(), 0, true))).doesNotContain("its spreads were not drawn");
    }

    @Test
    void bounds_that_the_kept_blend_breaks_are_told_with_their_draws() {
        assertThat(text(study(compositions(), 0, true)))
                .contains("in none of the draws does any blend meet every bound.")
                .contains("breaks a bound in every draw. What it breaks most often is \"fat\", in 100 %.")
                .containsPattern("fat +most +100 +20 % +21 %")
                .contains("The rules' choice of ingredients was kept as it is today");
    }

    private static Compositions compositions() {
        var broken = new Broken("fat", "/bounds/0", Side.MAX, 50, BigFraction.of(20), BigFraction.of(21), "%");
        return new Compositions(50, 2, 50, 50, 0, null, List.of(broken), null);
    }

    private static BigFraction perKg(String perPound) {
        return Decimal.of(perPound).divide(POUND);
    }

    private static ShareLine line(String name, String stage, String share) {
        return new ShareLine(name.toLowerCase(Locale.ROOT), stage, "Ann", Decimal.of(share), name);
    }

    private static StudyResult study(@Nullable Compositions compositions, long off, boolean safestIsToday) {
        var levels = Stream.of("1", "2", "3", "4", "5")
                .map(cost -> new Level(Decimal.of("0.5"), perKg(cost)))
                .toList();
        var kept = new Kept(
                perKg("0.1"),
                perKg("0.2"),
                List.of(line("Lard", "a", "0.4"), line("Bran", "a", "0.35"), line("Bran", "b", "0.25")));
        return new StudyResult(
                1000,
                1,
                new Cost(perKg("3"), perKg("3"), perKg("1"), perKg("0.5"), perKg("6"), levels),
                new Target(perKg("2.5"), 250),
                kept,
                new Safest(kept, 4, safestIsToday),
                List.of(
                        new Price("lard", "Ann", Decimal.of("0.99"), "Lard"),
                        new Price("bran", "Bob", Decimal.of("0.009"), "Bran")),
                List.of(new Use("lard", 1000, Decimal.of("0.4"), "Lard", Decimal.of("0.4"))),
                List.of(new Bound("fat", "/bounds/0", Side.MIN, 10)),
                new Certificate(100, off),
                compositions,
                List.of(),
                "Filling",
                "USD",
                List.of(),
                true,
                true);
    }

    private static String text(StudyResult study) {
        return TextRenderer.render(StudyReport.of(study)).replaceAll("\n *", " ");
    }
}
