package panade.plan;

import java.util.List;
import panade.certify.Verdict;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.Conflict;
import panade.explain.Explanation;
import panade.explain.Room;

/** What came of a brief. */
public sealed interface Outcome {
    /**
     * A certified least-cost blend with its reasons.
     *
     * @param alternatives clearly different blends that keep every bound within the room's cost
     */
    record Blended(
            Brief brief,
            Blend blend,
            Explanation explanation,
            Room room,
            List<Blend> alternatives,
            Verdict.Optimum proof)
            implements Outcome {}

    /** Proof that no blend meets the brief. */
    record Conflicted(Brief brief, Conflict conflict, Verdict.Impossible proof) implements Outcome {}

    /** No answer that could be proved. */
    record Undecided(Brief brief, String reason) implements Outcome {}
}
