package panade.cone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.assemble.BlendResults;
import panade.audit.Audit;
import panade.certify.Decision;
import panade.compile.Limit;
import panade.cost.OptionalSections;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Sureness;
import panade.plan.Outcome.Blended;
import panade.plan.ProvedBlend;
import panade.quantity.Decimal;
import panade.result.BlendResult;
import panade.result.BoundResult;
import panade.testing.Planners;

/**
 * Cattle feed with protein that varies: C. van de Panne and W. Popp, "Minimum-cost cattle feed under probabilistic
 * protein constraints", Management Science 9 (1963), with the figures of problem 73 in W. Hock and K. Schittkowski,
 * "Test Examples for Nonlinear Programming Codes" (1981), where 1.645 standard deviations count as 95 %. The spreads
 * are the square roots of the printed variances to 18 places, the probability is that of 1.645.
 */
class CattleFeedTest {
    private static final Path BRIEF = Path.of("src/test/resources/sure/cattle-feed/constraints/brief.json");

    @Test
    void the_published_least_cost_and_blend_are_found() {
        var result = result();
        // printed: 29.89437816; to more digits by SLSQP and by cuts with two linear solvers: 29.8943781591
        assertThat(perTonne(result.cost().perKg())).isCloseTo(29.8943781591, within(3e-8));
        assertThat(share(result, "barley")).isCloseTo(0.6355216, within(1e-7));
        assertThat(share(result, "sesame")).isCloseTo(0.3127019, within(1e-7));
        assertThat(share(result, "groundnut")).isCloseTo(0.05177655, within(1e-7));
        assertThat(result.blend()).hasSize(3);
    }

    /** GAMS model chance, marginals of the published point (GlobalLib). */
    @Test
    void the_published_multipliers_are_the_prices_of_the_bounds() {
        var result = result();
        assertThat(rate(bound(result, "protein"))).isCloseTo(0.410541080859, within(3e-6));
        assertThat(rate(bound(result, "fat"))).isCloseTo(0.580355083451, within(3e-6));
    }

    @Test
    void the_cost_lies_within_a_millionth_above_a_bound_that_is_proved() {
        var certificate = result().certificate();
        var least = Objects.requireNonNull(certificate.boundPerKg());
        assertThat(perTonne(least)).isLessThanOrEqualTo(29.89437815911).isCloseTo(29.8943781591, within(3e-8));
        assertThat(certificate.gap()).isBetween(BigFraction.ZERO, CuttingPlanes.MOST_GAP);
    }

    /** Cuts with HiGHS took three (28.942648, 29.893655, 29.894378). */
    @Test
    void three_cuts_are_enough() {
        assertThat(proved(brief()).compiled().rows().stream()
                        .filter(Limit.OfCone.class::isInstance)
                        .count())
                .isLessThanOrEqualTo(3);
    }

    @Test
    void what_is_printed_keeps_the_protein_by_hand() {
        var blend = proved(brief()).blend();
        var mean = sum(blend, "12", "11.9", "41.8", "52.1");
        var variance = square(blend, "barley", "0.28")
                .add(square(blend, "oats", "0.19"))
                .add(square(blend, "sesame", "20.5"))
                .add(square(blend, "groundnut", "0.62"));
        var clear = mean.subtract(BigFraction.of(21));
        var asked = Decimal.of("1.645").multiply(Decimal.of("1.645")).multiply(variance);
        // the typed probability is 1.645 to ten digits only
        var missing = asked.subtract(clear.multiply(clear)).doubleValue();
        assertThat(clear.signum()).isPositive();
        assertThat(missing).isLessThan(1e-8);
        assertThat(new Audit(brief(), blend).faults()).isEmpty();
    }

    /** Least costs at other probabilities, computed by SLSQP and by cuts with HiGHS and GLPK, which agree. */
    @ParameterizedTest
    @CsvSource({
        "0.841621233572915, 29.4177801352",
        "1.281551565544601, 29.6778997302",
        "1.959963984540055, 30.0831890567",
        "2.326347874040842, 30.2371508124"
    })
    void other_probabilities_cost_what_other_solvers_say(String quantile, double perTonne) {
        assertThat(perTonne(proved(with(quantile)).blend().costPerKg())).isCloseTo(perTonne, within(6e-6));
    }

    @Test
    void without_spread_counted_the_mean_alone_is_cheaper() {
        var mean = proved(brief().asStated()).blend().costPerKg();
        assertThat(perTonne(mean)).isCloseTo(28.9426476517, within(1e-9));
        assertThat(new Audit(brief(), proved(brief().asStated()).blend()).broken())
                .containsExactly("protein");
    }

    private static Brief brief() {
        return ((Reading.Accepted<Brief>) Documents.readBrief(BRIEF, Overrides.NONE)).value();
    }

    private static Brief with(String quantile) {
        var brief = brief();
        var bound = brief.bounds().stream()
                .filter(each -> each.sure() != null)
                .findFirst()
                .orElseThrow();
        return brief.replacing(bound, sure(bound, quantile));
    }

    private static Bound sure(Bound bound, String quantile) {
        var share = Objects.requireNonNull(bound.sure()).share();
        return bound.withSureness(new Sureness(share, Decimal.of(quantile), null));
    }

    private static ProvedBlend proved(Brief brief) {
        return ((Decision.Found<ProvedBlend>) Planners.LINEAR.proved(brief)).value();
    }

    private static BlendResult result() {
        return BlendResults.of((Blended) Planners.LINEAR.plan(brief()), OptionalSections.NONE);
    }

    private static double perTonne(BigFraction perKg) {
        return perKg.multiply(1000).doubleValue();
    }

    private static double share(BlendResult result, String id) {
        return result.blend().stream()
                .filter(line -> line.ingredient().equals(id))
                .findFirst()
                .orElseThrow()
                .share()
                .doubleValue();
    }

    private static BoundResult bound(BlendResult result, String name) {
        return result.bounds().get().stream()
                .filter(bound -> bound.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double rate(BoundResult bound) {
        return perTonne(Objects.requireNonNull(bound.shadowPrice().whenRaised()));
    }

    private static BigFraction sum(Blend blend, String barley, String oats, String sesame, String nut) {
        return blend.shareOf("barley")
                .multiply(Decimal.of(barley))
                .add(blend.shareOf("oats").multiply(Decimal.of(oats)))
                .add(blend.shareOf("sesame").multiply(Decimal.of(sesame)))
                .add(blend.shareOf("groundnut").multiply(Decimal.of(nut)));
    }

    private static BigFraction square(Blend blend, String id, String variance) {
        return blend.shareOf(id).multiply(blend.shareOf(id)).multiply(Decimal.of(variance));
    }
}
