package panade.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.Explanation;
import panade.explain.Room;
import panade.explain.conflict.Conflict;
import panade.model.Unproved;

/** What came of a brief. */
public sealed interface Outcome {
    /** What each of the three cases comes to. */
    default <R> R fold(
            Function<Blended, R> blended, Function<Conflicted, R> conflicted, Function<Undecided, R> undecided) {
        if (this instanceof Blended found) {
            return blended.apply(found);
        }
        return this instanceof Conflicted proof ? conflicted.apply(proof) : undecided.apply((Undecided) this);
    }

    /** The blend; empty where it is proved that there is none. Not to know ends the work that needs to know. */
    default Optional<Blended> blended() {
        return fold(Optional::of, none -> Optional.empty(), open -> {
            throw new Unproved(open.reason());
        });
    }

    /** This outcome with its explanation complete; undecided, with the reason, where a part of it cannot be settled. */
    default Outcome explained() {
        return settled(Explanation::complete);
    }

    /** The same as far as bounds and what the blend holds go, which is what somebody who waits reads first. */
    default Outcome measured() {
        return settled(explanation -> {
            explanation.unique();
            explanation.limits();
            explanation.properties();
        });
    }

    private Outcome settled(Consumer<Explanation> parts) {
        return fold(
                found -> {
                    try {
                        parts.accept(found.explanation());
                        return found;
                    } catch (Unproved open) {
                        return new Undecided(found.asked(), open.reason());
                    }
                },
                none -> none,
                open -> open);
    }

    /**
     * A certified least-cost blend with its reasons.
     *
     * @param asked the brief as it was asked
     * @param brief the brief whose linear model was proved: the same, or one with the choice made that rules leave
     * @param choice how good that choice is; null when there are no rules
     * @param alternatives clearly different blends that keep every bound within the room's cost
     * @param least no blend that keeps every bound costs less per kilogram, proved; null where the blend's own cost is
     *     that least
     * @param steps what comes of moving a number, solved when it is asked for
     */
    record Blended(
            Brief asked,
            Brief brief,
            @Nullable Choice choice,
            Blend blend,
            Explanation explanation,
            Room room,
            List<Blend> alternatives,
            Verdict.Optimum proof,
            @Nullable BigFraction least,
            NumberSteps steps)
            implements Outcome {}

    /**
     * Proof that no blend meets the brief.
     *
     * @param proof how it was proved
     */
    record Conflicted(Brief brief, Conflict conflict, Contradiction proof) implements Outcome {}

    /** No answer that could be proved. */
    record Undecided(Brief brief, String reason) implements Outcome {}
}
