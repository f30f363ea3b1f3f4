package panade.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.testing.CommandRun;
import panade.testing.Planners;

/**
 * The cost of being surer, on the cattle feed of van de Panne and Popp, Management Science 9 (1963): at 50 % it is the
 * linear program on means (GAMS model chance, start point), and at 80, 90 and 99 % what SLSQP and cuts with HiGHS and
 * GLPK agree on.
 */
class SureCurveTest {
    private static final Path BRIEF = Path.of("src/test/resources/sure/cattle-feed/constraints/brief.json");
    private static final List<Double> COSTS =
            List.of(28.9426476517, 29.4177801352, 29.6778997302, 29.89399, 29.8943781591, 30.2371508124);

    @Test
    void each_point_costs_what_other_solvers_say() {
        var brief = ((Reading.Accepted<Brief>) Documents.readBrief(BRIEF, Overrides.NONE)).value();
        var curve = SureCurve.of(Planners.LINEAR, brief, brief.bounds().get(1));
        assertThat(curve.points()).hasSize(COSTS.size());
        for (int i = 0; i < COSTS.size(); i++) {
            var point = curve.points().get(i);
            var cost = point.cheapest().found().orElseThrow().costPerKg().multiply(1000);
            // at 95 % itself no other figure is known: it lies a little below that of 1.645 deviations
            assertThat(cost.doubleValue()).isCloseTo(COSTS.get(i), within(i == 3 ? 4e-4 : 6e-6));
            assertThat(point.asked()).isEqualTo(i == 4);
        }
    }

    @Test
    void the_curve_is_told_in_a_table_and_to_machines() {
        var told = CommandRun.of("trace", BRIEF.toString(), "--sure", "protein");
        assertThat(told.status()).isZero();
        assertThat(told.output()).contains("What it costs to be sure of \"protein\", at least 21 %:", "as asked");
        var json = CommandRun.of("trace", BRIEF.toString(), "--sure", "protein", "--json");
        assertThat(json.output()).contains("\"sure\" : 0.99", "\"dearerPerKg\" : 0.00129450");
    }

    @Test
    void what_does_not_vary_is_refused() {
        var told = CommandRun.of("trace", BRIEF.toString(), "--sure", "fat");
        assertThat(told.status()).isEqualTo(2);
        assertThat(told.messages()).contains("some ingredient states a \"spread\"");
    }

    @Test
    void other_curves_cannot_keep_a_bound_sure_and_say_so() {
        var told = CommandRun.of("trace", BRIEF.toString(), "--bound", "fat");
        assertThat(told.status()).isEqualTo(3);
        assertThat(told.messages()).contains("this command cannot keep \"protein\" sure", "\"trace --sure\" know it");
    }
}
