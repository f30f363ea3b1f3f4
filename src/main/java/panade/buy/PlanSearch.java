package panade.buy;

import java.util.Optional;

/** What came of the search for a plan. */
public sealed interface PlanSearch {
    /**
     * A plan: its packs were held as the search found them, all else was proved to be the best beside them.
     *
     * @param campaign the plan
     */
    record Planned(MultiPeriodPlan campaign) implements PlanSearch {}

    /**
     * No plan exists.
     *
     * @param proved whether that was proved in exact fractions; otherwise it is the search's own word
     */
    record Impossible(boolean proved) implements PlanSearch {}

    /**
     * The search came to nothing, which says nothing about whether there is a plan.
     *
     * @param reason why, one clause
     * @param asked whether there was a solver to ask; where there was none, more time does not help
     */
    record Undecided(String reason, boolean asked) implements PlanSearch {}

    /** The plan; empty where none was found. */
    default Optional<MultiPeriodPlan> plan() {
        return this instanceof Planned planned ? Optional.of(planned.campaign()) : Optional.empty();
    }
}
