package panade.report.plate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.quantity.Decimal;
import panade.render.TextRenderer;
import panade.result.BatchResult;
import panade.result.BatchResult.Fail;
import panade.result.BatchResult.Line;
import panade.result.BatchResult.Sheet;
import panade.result.BatchResult.Stage;
import panade.result.BlendResult.Allergens;
import panade.result.RemarkLine;

/** The words of a bench sheet, from a result made by hand. */
class SheetReportTest {
    private static final BigFraction OUNCE = Decimal.of("28.349523125");

    @Test
    void weights_are_shown_in_grams_and_pounds_and_limits_to_the_safe_side() {
        var line = line("Lard", "500", "499.96", "500.04", false);
        assertThat(text(sheet(List.of(line), List.of(), List.of())))
                .contains("1. Mix: 500 g (1 lb 1.64 oz)")
                .containsPattern("\\[ ] +500 g +1 lb 1.64 oz +Lard +500.0 +500.0 +____");
    }

    @Test
    void a_scale_in_ounces_comes_first_and_a_limit_on_its_step_stays_there() {
        var line = new Line(
                "mix",
                "lard",
                OUNCE.multiply(8),
                BigFraction.ZERO,
                null,
                OUNCE.multiply(8),
                "1 oz",
                "Lard",
                OUNCE.multiply(5),
                null,
                OUNCE,
                true);
        assertThat(text(sheet(List.of(line), List.of(), List.of())))
                .containsPattern("\\[ ] +8 oz +227 g +Lard +5.0 +any +____");
    }

    @Test
    void what_comes_to_nothing_is_named_as_left_out() {
        var some = line("Lard", "500", "499", "501", false);
        var none = line("Pepper", "0", "0", "1", false);
        assertThat(text(sheet(List.of(some, none), List.of(), List.of())))
                .contains("Left out, too little for this scale: Pepper.")
                .doesNotContain("Where both are the same");
    }

    @Test
    void a_missed_fixed_number_is_told_with_how_far_it_is_off() {
        var fail = new Fail("/bounds/0/min", "fat", Decimal.of("19.5"), BigFraction.of(20), "g/100 g", true);
        assertThat(text(sheet(List.of(line("Lard", "500", "500", "500", false)), List.of(fail), List.of())))
                .contains("hit every fixed number")
                .contains("fat: comes to 19.5 g/100 g, is fixed at 20 g/100 g: 0.5 g/100 g too little")
                .contains("Weigh by this sheet only if that much off will do.")
                .contains("Where both are the same no other weight will do.");
    }

    @Test
    void a_broken_floor_forbids_the_sheet() {
        var fail = new Fail("/bounds/0/min", "fat", null, BigFraction.of(20), "", false);
        assertThat(text(sheet(List.of(line("Lard", "500", "499", "501", false)), List.of(fail), List.of())))
                .contains("fat: comes to nothing, needs at least 20")
                .contains("Do not weigh by this sheet.");
    }

    @Test
    void the_line_furthest_off_is_named_where_weights_were_moved_together() {
        var near = line("Lard", "500", "499", "501", false);
        var far = new Line(
                "mix",
                "salt",
                BigFraction.of(9),
                BigFraction.of(8),
                BigFraction.of(10),
                BigFraction.of(10),
                "1 g",
                "Salt",
                BigFraction.of(8),
                BigFraction.of(10),
                BigFraction.ONE,
                false);
        var fail = new Fail("/bounds/0/max", "salt", BigFraction.of(3), BigFraction.of(2), "%", false);
        assertThat(text(sheet(List.of(near, far), List.of(), List.of(fail))))
                .contains("salt: comes to 3 %, may be at most 2 %")
                .contains("furthest off is Salt, by -10 %.");
    }

    @Test
    void allergens_and_remarks_come_last() {
        var sheet = sheet(List.of(line("Lard", "500", "499", "501", false)), List.of(), List.of());
        assertThat(text(sheet))
                .contains("Allergens: soy; not known for Lard. Mind cross-contact.")
                .contains("brief.json:3: odd");
    }

    private static Line line(String name, String grams, String least, String most, boolean inOunces) {
        var weight = Decimal.of(grams);
        return new Line(
                "mix",
                name,
                weight,
                Decimal.of(least),
                Decimal.of(most),
                weight,
                "1 g",
                name,
                Decimal.of(least),
                Decimal.of(most),
                BigFraction.ONE,
                inOunces);
    }

    private static Sheet sheet(List<Line> lines, List<Fail> fails, List<Fail> plainFails) {
        var weighed = lines.stream().filter(line -> line.grams().signum() > 0).toList();
        var total = weighed.stream().map(Line::grams).reduce(BigFraction.ZERO, BigFraction::add);
        @Nullable String fine = null;
        return new Sheet(
                lines,
                total,
                fails.isEmpty(),
                fails,
                plainFails,
                fine,
                false,
                BigFraction.of(2),
                null,
                "Filling",
                "1 lb",
                "USD",
                List.of(new Stage("Mix", total, weighed, List.of("Stir."))),
                new Allergens(List.of("soy"), List.of("Lard")));
    }

    private static String text(Sheet sheet) {
        var remark = new RemarkLine("/title", "brief.json", 3, "odd", "brief.json:3");
        return TextRenderer.render(SheetReport.of(new BatchResult(sheet, null, List.of(remark))))
                .replaceAll("\n *", " ");
    }
}
