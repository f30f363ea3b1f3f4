package panade.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.audit.Audit;
import panade.bench.BatchSheet.Line;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.testing.DemoBriefs;
import panade.testing.Planners;

/** Bench sheets of the invented demo, each weight put back into the brief as a cook would check it. */
class WeighingTest {
    private static final Planner PLANNER = Planners.FULL;
    private static final BigFraction HAIR = BigFraction.of(1, 1_000_000_000);

    @ParameterizedTest(name = "{0}, {1} on a scale that reads {2}")
    @CsvSource({
        "dumpling-filling, 1 lb, 1 g",
        "dumpling-filling, 1 lb, 0.1 g",
        "dumpling-filling, 1 lb, 0.25 oz",
        "dumpling-filling, 5 lb, 1 g",
        "dumpling-filling, 5 lb, 0.25 oz",
        "dumpling-filling, 20 lb, 1 g",
        "dumpling-filling, 20 lb, 0.25 oz",
        "dumpling-filling, 60 lb, 1 g",
        "dumpling-filling, 60 lb, 0.25 oz",
        "skewer-mince, 1 lb, 1 g",
        "skewer-mince, 1 lb, 0.1 g",
        "skewer-mince, 5 lb, 0.25 oz",
        "skewer-mince, 20 lb, 1 g",
        "skewer-mince, 60 lb, 0.25 oz",
        "taco-crumble, 1 lb, 1 g",
        "taco-crumble, 1 lb, 0.1 g",
        "taco-crumble, 5 lb, 0.25 oz",
        "taco-crumble, 20 lb, 1 g",
        "taco-crumble, 60 lb, 0.25 oz",
        "dumpling-filling-short, 20 lb, 1 g",
        "dumpling-filling-short, 1 lb, 0.1 g"
    })
    void what_the_sheet_says_of_its_weights_is_so(String name, String batch, String step) {
        var sheet = sheet(name, batch, step);
        assertThat(sheet.lines())
                .allMatch(line -> isWhole(line.weight().divide(line.step().base())));
        var off = sheet.total().subtract(sheet.brief().batch().base()).abs();
        assertThat(off.subtract(weight(step).base()).signum()).isNotPositive();
        var broken = broken(sheet, weights(sheet));
        assertThat(broken.isEmpty()).isEqualTo(sheet.isMet());
        assertThat(broken)
                .containsAll(sheet.fails().stream().map(BatchSheet.Fail::name).toList());
    }

    @ParameterizedTest(name = "{0}, {1} on a scale that reads {2} meets every bound")
    @CsvSource({
        "dumpling-filling, 20 lb, 1 g", "dumpling-filling, 1 lb, 0.1 g",
        "dumpling-filling-short, 20 lb, 1 g", "dumpling-filling-short, 1 lb, 0.1 g"
    })
    void a_scale_that_is_fine_enough_meets_every_bound(String name, String batch, String step) {
        assertThat(sheet(name, batch, step).isMet()).isTrue();
    }

    @Test
    void a_pound_rounded_plainly_on_a_gram_scale_sets_at_0_67_of_0_75() {
        // 0.524 % of 453.6 g are 2.38 g of methylcellulose in the mix; the scale says 2
        var fails = sheet("dumpling-filling", "1 lb", "1 g").plainFails();
        var hot = fails.stream()
                .filter(fail -> fail.name().equals("holds together hot"))
                .findFirst()
                .orElseThrow();
        assertThat(Decimal.round(Objects.requireNonNull(hot.reaches()), 2)).isEqualByComparingTo("0.67");
    }

    @Test
    void a_scale_that_is_too_coarse_is_told_with_one_that_is_not() {
        var sheet = sheet("dumpling-filling", "1 lb", "0.25 oz");
        assertThat(sheet.isMet()).isFalse();
        assertThat(sheet.fails()).isNotEmpty();
        var finer = Objects.requireNonNull(sheet.fineEnough());
        assertThat(finer.base().subtract(weight("0.25 oz").base()).signum()).isNegative();
        assertThat(sheet("dumpling-filling", "1 lb", finer.text()).isMet()).isTrue();
    }

    @Test
    void a_weight_may_be_off_alone_as_far_as_the_sheet_says_and_no_further() {
        var sheet = sheet("dumpling-filling", "20 lb", "1 g");
        for (int l = 0; l < sheet.lines().size(); l++) {
            var line = sheet.lines().get(l);
            assertThat(broken(sheet, with(sheet, l, line.least()))).isEmpty();
            assertThat(broken(sheet, with(sheet, l, line.least().subtract(HAIR))))
                    .isNotEmpty();
            var most = line.most();
            if (most != null) {
                assertThat(broken(sheet, with(sheet, l, most))).isEmpty();
                assertThat(broken(sheet, with(sheet, l, most.add(HAIR)))).isNotEmpty();
            }
        }
    }

    @Test
    void small_weights_go_on_the_finer_scale() {
        var brief = DemoBriefs.read("dumpling-filling", "september").withBatch(weight("1 lb"));
        var scales = new Scales(weight("1 g"), weight("0.1 g"), weight("20 g").base());
        var sheet = Weighing.of(PLANNER, (Blended) PLANNER.answer(brief), scales);
        assertThat(sheet.isMet()).isTrue();
        for (var line : sheet.lines()) {
            boolean small = line.exact().subtract(weight("20 g").base()).signum() < 0;
            assertThat(line.step().text()).isEqualTo(small ? "0.1 g" : "1 g");
        }
    }

    private static BatchSheet sheet(String name, String batch, String step) {
        var brief = DemoBriefs.read(name, "september").withBatch(weight(batch));
        return Weighing.of(PLANNER, (Blended) PLANNER.answer(brief), new Scales(weight(step), null, BigFraction.ZERO));
    }

    private static Quantity weight(String text) {
        return Quantity.parse(text).orElseThrow();
    }

    private static boolean isWhole(BigFraction number) {
        return number.getNumerator().mod(number.getDenominator().abs()).signum() == 0;
    }

    private static List<BigFraction> weights(BatchSheet sheet) {
        return sheet.lines().stream().map(Line::weight).toList();
    }

    private static List<BigFraction> with(BatchSheet sheet, int line, BigFraction weight) {
        var weights = new ArrayList<>(weights(sheet));
        weights.set(line, weight);
        return weights;
    }

    /** Names of the bounds that weights break, measured against what they come to together. */
    private static List<String> broken(BatchSheet sheet, List<BigFraction> weights) {
        var total = weights.stream().reduce(BigFraction.ZERO, BigFraction::add);
        var lines = new ArrayList<Blend.Line>();
        for (int l = 0; l < weights.size(); l++) {
            var use = sheet.lines().get(l).use();
            var offer = sheet.brief().offersFor(use.ingredient()).get(0);
            lines.add(new Blend.Line(use, offer, weights.get(l).divide(total), BigFraction.ZERO));
        }
        Brief made = sheet.brief()
                .withBatch(
                        Quantity.of(total, Quantity.parse("1 kg").orElseThrow().unit(), "weighed"));
        return new Audit(made, new Blend(lines, BigFraction.ONE)).broken();
    }
}
