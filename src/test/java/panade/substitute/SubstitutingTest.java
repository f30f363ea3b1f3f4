package panade.substitute;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.quantity.Unit;
import panade.substitute.Substitution.StandIn;
import panade.testing.DemoBriefs;
import panade.testing.Planners;

/** The demo's figures for a missing binder were proved independently with another interpreter of the documents. */
class SubstitutingTest {
    private static final Planner PLANNER = Planners.LINEAR;
    private static final Substitution WITHOUT_METHYLCELLULOSE = swap("dumpling-filling", "methylcellulose");

    @Test
    void potato_protein_alone_can_stand_in_for_methylcellulose_in_the_dumpling_filling() {
        var potato = standIn(WITHOUT_METHYLCELLULOSE, "potato-protein");
        assertThat(perLb(Objects.requireNonNull(potato.blended()).blend().costPerKg()))
                .isEqualTo("1.516");
        assertThat(Decimal.round(potato.share().multiply(100), 2)).hasToString("3.72");
    }

    @Test
    void half_as_strong_hpmc_alone_takes_more_of_it_and_16_cents() {
        var hpmc = standIn(WITHOUT_METHYLCELLULOSE, "hpmc");
        assertThat(perLb(Objects.requireNonNull(hpmc.blended()).blend().costPerKg()))
                .isEqualTo("1.438");
        assertThat(Decimal.round(hpmc.share().multiply(100), 2)).hasToString("1.54");
    }

    /** Neither the mince nor the fat crumb sets without a binder that sets hot: no one number mends both. */
    @Test
    void konjac_sets_neither_the_mince_nor_the_fat_crumb() {
        var konjac = standIn(WITHOUT_METHYLCELLULOSE, "konjac");
        assertThat(konjac.blended()).isNull();
        assertThat(konjac.failure()).isNull();
    }

    @Test
    void without_both_cellulose_ethers_the_skewer_mince_has_no_blend() {
        assertThat(swap("skewer-mince", "methylcellulose", "hpmc").after()).isInstanceOf(Conflicted.class);
    }

    @Test
    void losing_any_ingredient_of_any_product_never_makes_it_cheaper() {
        int lost = 0;
        for (var name : DemoBriefs.NAMES) {
            var before = (Blended) PLANNER.answer(DemoBriefs.read(name));
            var used = new TreeSet<String>();
            before.blend().lines().forEach(line -> used.add(line.use().ingredient()));
            for (var id : used) {
                var after = PLANNER.cheapest(
                        before.brief().without(before.brief().set().withVariants(id)));
                after.orUndecided()
                        .ifPresent(blend -> assertThat(blend.costPerKg()
                                        .subtract(before.blend().costPerKg())
                                        .signum())
                                .as("%s without %s", name, id)
                                .isNotNegative());
                lost++;
            }
        }
        assertThat(lost).isGreaterThan(50);
    }

    private static Substitution swap(String name, String... out) {
        var before = (Blended) PLANNER.answer(DemoBriefs.read(name));
        var lots = new TreeSet<String>();
        Set.of(out).forEach(id -> lots.addAll(before.brief().set().withVariants(id)));
        return Substituting.of(PLANNER, before, lots);
    }

    private static StandIn standIn(Substitution swap, String id) {
        return swap.standIns().stream()
                .filter(each -> each.ingredient().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String perLb(BigFraction perKg) {
        return Decimal.round(perKg.multiply(Unit.POUND.factor()), 3).toPlainString();
    }
}
