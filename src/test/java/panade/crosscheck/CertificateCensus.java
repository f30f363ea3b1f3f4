package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.statistics.Statistics;
import panade.plan.Outcome;
import panade.solver.ortools.OrToolsSolver;

/** Ten thousand random kitchens, none of whose answers may be without proof; run by {@code mvn -P census test}. */
class CertificateCensus {
    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 10_000, edgeCases = EdgeCasesMode.NONE, shrinking = ShrinkingMode.OFF)
    void no_answer_is_without_proof(@ForAll("problems") RawProblem problem) {
        var outcome = Answer.to(problem, new OrToolsSolver());
        Statistics.label("outcome").collect(outcome.getClass().getSimpleName());
        if (outcome instanceof Outcome.Blended blended) {
            Statistics.label("engine").collect(blended.proof().engine());
        }
        assertThat(outcome).isNotInstanceOf(Outcome.Undecided.class);
    }
}
