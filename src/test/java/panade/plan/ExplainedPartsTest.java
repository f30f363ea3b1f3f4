package panade.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import panade.assemble.BriefResults;
import panade.explain.Explanation.Part;
import panade.model.Unproved;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Undecided;
import panade.result.BriefResult;
import panade.solver.ortools.OrToolsSolver;
import panade.substitute.Substituting;
import panade.testing.SmallKitchen;

/** Which parts of an explanation are worked out for whom, counted as they are. */
class ExplainedPartsTest {
    private static final SmallKitchen KITCHEN = new SmallKitchen(
            """
            {"id": "water", "values": {}}, {"id": "binder", "kinds": ["gum"], "values": {}},
            {"id": "fresh", "kinds": ["gum"], "values": {}},
            {"id": "salt", "values": {}}
            """,
            "water,tap,0.10,kg,\nbinder,north,3.00,kg,\nfresh,south,5.00,kg,\nsalt,south,1.00,kg,\n",
            "{\"kind\": \"gum\", \"min\": \"10 %\"}",
            "");

    private final List<Part> parts = new ArrayList<>();
    private final Planner planner =
            new Planner(Engines.linear(new OrToolsSolver()), Planner.USUAL_SLACK, 1, parts::add);

    @Test
    void anAnswerAloneExplainsNothing() {
        assertThat(planner.answer(KITCHEN.brief())).isInstanceOf(Blended.class);
        planner.cheapest(KITCHEN.brief());
        assertThat(parts).isEmpty();
    }

    @Test
    void aWholePlanHasEachPartOnce() {
        var blended = (Blended) planner.plan(KITCHEN.brief());
        blended.explanation().limits();
        blended.explanation().unused();
        assertThat(parts).containsExactlyInAnyOrder(Part.values());
    }

    @Test
    void whetherABlendIsTheOnlyOneTakesNoPrices() {
        var explanation = ((Blended) planner.answer(KITCHEN.brief())).explanation();
        assertThat(explanation.unique()).isTrue();
        assertThat(explanation.unique()).isTrue();
        assertThat(parts).containsExactly(Part.UNIQUE);
    }

    @Test
    void aSwapAsksOnlyWhatBinds() {
        var swap = Substituting.of(planner, (Blended) planner.answer(KITCHEN.brief()), Set.of("binder"));
        assertThat(swap.standIns()).hasSize(1);
        assertThat(parts).containsExactly(Part.BINDINGS);
    }

    @Test
    void aBlendThatCannotBeExplainedIsUndecided() {
        var outcome = new Planner(Engines.linear(new OrToolsSolver()), Planner.USUAL_SLACK, 1, part -> {
                    throw new Unproved("a rate was not proved");
                })
                .answer(KITCHEN.brief());
        assertThat(outcome).isInstanceOf(Blended.class);
        assertThat(outcome.explained())
                .isInstanceOfSatisfying(
                        Undecided.class, open -> assertThat(open.reason()).isEqualTo("a rate was not proved"));
        assertThat(BriefResults.of(outcome)).isInstanceOf(BriefResult.Undecided.class);
    }
}
