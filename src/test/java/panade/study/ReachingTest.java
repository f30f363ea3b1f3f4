package panade.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.domain.Brief;
import panade.explain.Move;
import panade.explain.Room.PropertyRoom;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.solver.ortools.OrToolsSolver;

/** The demo's price target; all data invented, expected figures worked out by hand or by another solver. */
class ReachingTest {
    private static final Planner PLANNER = new Planner(new OrToolsSolver());
    private static final Offset<BigDecimal> CENTS = within(new BigDecimal("0.00005"));
    private static final Target SEPTEMBER = fromShelf("september");
    private static final Target DECEMBER = fromShelf("december");

    @Test
    void a_tub_at_7_19_leaves_1_3033_a_pound_for_ingredients() {
        // 7.19 x .65 x .82 x .78 = 2.98919; labour 24 + 20 x 1.08 min at 21.84/h over 19.4 lb packed = .8556; .31; .48;
        // less 3 %
        var brief = DemoBriefs.read("dumpling-filling", "september");
        var shelf = worked(brief);
        assertThat(shelf.lines().stream().map(line -> perPound(line.left()).toPlainString()))
                .containsExactly("7.1900", "4.6735", "3.8323", "2.9892", "2.1336", "1.8236", "1.3436", "1.3033");
    }

    @Test
    void september_meets_the_target_and_the_spare_money_buys_half_a_point_of_protein() {
        assertThat(SEPTEMBER.isMet()).isTrue();
        assertThat(perPound(SEPTEMBER.gapPerKg())).isEqualByComparingTo("-0.0267");
        var protein = room(SEPTEMBER, "PROCNT");
        assertThat(costWithProtein(SEPTEMBER.best().brief(), protein.max()))
                .isCloseTo(perPound(SEPTEMBER.targetPerKg()), CENTS);
    }

    @Test
    void december_is_3_3_cents_short() {
        assertThat(DECEMBER.isMet()).isFalse();
        assertThat(perPound(DECEMBER.gapPerKg())).isEqualByComparingTo("0.0326");
    }

    @Test
    void in_december_protein_alone_must_fall_below_13_per_cent() {
        var protein = move(DECEMBER, "protein");
        var enough = Objects.requireNonNull(protein.to());
        assertThat(Decimal.round(enough, 4)).isEqualByComparingTo("12.5228");
        assertThat(protein.costPerKg().subtract(DECEMBER.targetPerKg()).signum())
                .isNotPositive();
    }

    @ParameterizedTest
    @CsvSource({
        "lysine in the protein,44,0.0238",
        "holds together hot,0.65,0.0179",
        "scallion,3,0.0240",
        "protein,13,0.0231"
    })
    void no_single_step_of_the_scenario_is_enough(String bound, BigDecimal to, BigDecimal saves) {
        var brief = DemoBriefs.read("dumpling-filling", "december");
        var cost = cost(eased(brief, bound, Decimal.of(to)));
        assertThat(perPound(DECEMBER.best().blend().costPerKg()).subtract(perPound(cost)))
                .isCloseTo(saves, within(new BigDecimal("0.0001")));
        var enough = Objects.requireNonNull(move(DECEMBER, bound).to());
        assertThat(enough.subtract(Decimal.of(to)).signum()).isNegative();
    }

    @Test
    void two_moves_together_meet_the_target_with_less_of_either_than_alone() {
        assertThat(DECEMBER.pair()).hasSize(2);
        var brief = DECEMBER.best().brief();
        for (var move : DECEMBER.pair()) {
            var together = Objects.requireNonNull(move.to());
            var alone = Objects.requireNonNull(move(DECEMBER, move.name()).to());
            var sooner = alone.subtract(move.from()).abs();
            assertThat(together.subtract(move.from()).abs().subtract(sooner).signum())
                    .isNegative();
            brief = eased(brief, move.name(), together);
        }
        assertThat(cost(brief)).isEqualTo(DECEMBER.pair().get(0).costPerKg());
        assertThat(cost(brief).subtract(DECEMBER.targetPerKg()).signum()).isNotPositive();
    }

    @Test
    void every_price_told_brings_the_cost_to_the_target_exactly() {
        var brief = DECEMBER.best().brief();
        assertThat(DECEMBER.prices()).anyMatch(price -> price.to() != null);
        for (var price : DECEMBER.prices()) {
            var to = price.to();
            var offer = brief.offers().stream()
                    .filter(each -> each.ingredient().equals(price.ingredient())
                            && each.supplier().equals(price.supplier()))
                    .findFirst()
                    .orElseThrow();
            var changed = brief.replacing(offer, offer.withPrice(to == null ? BigFraction.ZERO : to));
            assertThat(cost(changed)).isEqualTo(to == null ? price.costPerKg() : DECEMBER.targetPerKg());
        }
    }

    @Test
    void batches_of_22_lb_reach_the_december_target_and_21_lb_do_not() {
        assertThat(Objects.requireNonNull(DECEMBER.batch()).text()).isEqualTo("22 lb");
        var brief = DECEMBER.best().brief();
        var smaller = brief.making(Quantity.of(BigFraction.of(21), Unit.POUND, "21 lb"));
        assertThat(worked(smaller).perKg().subtract(cost(smaller)).signum()).isNegative();
    }

    private static Target fromShelf(String month) {
        var brief = DemoBriefs.read("dumpling-filling", month);
        var shelf = worked(brief);
        return Reaching.of(PLANNER, (Blended) PLANNER.answer(brief), shelf.perKg(), shelf);
    }

    private static ShelfTarget worked(Brief brief) {
        return ShelfTarget.of(brief, Objects.requireNonNull(brief.practice().shelf()));
    }

    private static Move move(Target target, String name) {
        return target.moves().stream()
                .filter(move -> move.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static PropertyRoom room(Target target, String property) {
        return target.atTarget().stream()
                .filter(room -> room.property().equals(property))
                .findFirst()
                .orElseThrow();
    }

    private static BigDecimal costWithProtein(Brief brief, BigFraction most) {
        return perPound(cost(eased(brief, "protein", most)));
    }

    /** The brief with a floor at another number. */
    private static Brief eased(Brief brief, String name, BigFraction number) {
        var bound = brief.bounds().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
        var moved = Quantity.of(number, bound.unit(), "moved");
        return brief.replacing(
                bound, bound.min() == null ? bound.withLimits(null, moved) : bound.withLimits(moved, bound.max()));
    }

    private static BigFraction cost(Brief brief) {
        return PLANNER.cheapest(brief).orElseThrow().costPerKg();
    }

    private static BigDecimal perPound(BigFraction perKg) {
        return Decimal.round(perKg.multiply(Unit.POUND.factor()), 4);
    }
}
