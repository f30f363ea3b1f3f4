package panade.plan;

import panade.certify.Verdict;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.Explanation;

/** What came of a brief. */
public sealed interface Outcome {
    /** A certified least-cost blend with its reasons. */
    record Blended(Brief brief, Blend blend, Explanation explanation, Verdict.Optimum proof) implements Outcome {}

    /** Proof that no blend meets the brief. */
    record Conflicted(Brief brief, Verdict.Impossible proof) implements Outcome {}

    /** No answer that could be proved. */
    record Undecided(Brief brief, String reason) implements Outcome {}
}
