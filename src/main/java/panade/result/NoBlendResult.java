package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * Proof that no blend meets the brief, and what would change that.
 *
 * @param conflicts the paths of each set of {@code members}
 * @param members irreducible sets of bounds and rules that cannot hold together
 * @param allConflicts whether these are all such sets
 * @param separateConflicts how many sets were found of which no two share a member
 * @param conflictProved whether it is proved that the first set cannot hold together; else that is the search's word
 * @param freeing of each set, the paths of those without which the rest can hold
 * @param cures single changes that each make a blend possible, cheapest first
 * @param combined changes that make a blend possible together; null when one change does or none was found
 * @param undecided what could not be decided in time, in words
 * @param remarks on the documents; null where this is a part of a larger result
 * @param brief what was asked
 */
public record NoBlendResult(
        Status status,
        List<List<String>> conflicts,
        List<List<Member>> members,
        boolean allConflicts,
        int separateConflicts,
        boolean conflictProved,
        List<List<String>> freeing,
        List<Relaxation> cures,
        @Nullable CombinedRelaxation combined,
        List<String> undecided,
        Contradiction certificate,
        @JsonInclude(Include.NON_NULL) @Nullable List<RemarkLine> remarks,
        @JsonIgnore BriefFacts brief)
        implements BriefResult {
    public NoBlendResult {
        conflicts = List.copyOf(conflicts);
        members = List.copyOf(members);
        freeing = List.copyOf(freeing);
        cures = List.copyOf(cures);
        undecided = List.copyOf(undecided);
    }

    /**
     * One side of a bound in a conflict, or a rule.
     *
     * @param path JSON Pointer with the side, such as {@code /bounds/1/max}
     * @param words the bound and its limit as a cook reads it
     * @param frees whether the rest of the brief can hold without it
     */
    public record Member(
            String path,
            String file,
            String name,
            @JsonIgnore String words,
            @JsonIgnore boolean frees) {}

    /**
     * A change that makes a blend possible, or one of several that do together.
     *
     * @param path of the number or the exclusion
     * @param file where that is written; null for what is kept out, which may be said in several places
     * @param name what changes
     * @param costPerKg least cost after it; null when no price is known, or it is not enough alone
     * @param costProved whether it is proved that no blend costs less then; null without a cost
     */
    public record Relaxation(
            String path,
            @JsonInclude(Include.NON_NULL) @Nullable String file,
            String name,
            @JsonUnwrapped Change change,
            @Nullable BigFraction costPerKg,
            @JsonInclude(Include.NON_NULL) @Nullable Boolean costProved) {}

    /** Changes that make a blend possible together, with the least cost then as a {@link Relaxation} tells it. */
    public record CombinedRelaxation(
            List<Relaxation> moves,
            @Nullable BigFraction costPerKg,
            @JsonInclude(Include.NON_NULL) @Nullable Boolean costProved) {
        public CombinedRelaxation {
            moves = List.copyOf(moves);
        }
    }

    /** How something is changed. */
    public sealed interface Change {}

    /**
     * A number moves.
     *
     * @param kept the other side of a fixed bound of which only one side moves, in its own unit; null elsewhere
     */
    public record Move(
            BigFraction from,
            BigFraction to,
            String unit,
            @JsonInclude(Include.NON_NULL) @Nullable BigFraction kept,
            @JsonInclude(Include.NON_NULL) @Nullable String keptUnit)
            implements Change {}

    /** A rule is given up, or something left out is allowed. */
    public record Switch(State from, State to) implements Change {
        /** A rule, or a label to keep, is given up. */
        public static final Switch DROPPED = new Switch(State.KEPT, State.DROPPED);

        /** Something left out is allowed. */
        public static final Switch ALLOWED = new Switch(State.LEFT_OUT, State.ALLOWED);
    }

    /** What a document says of a rule or an ingredient. */
    public enum State {
        KEPT,
        DROPPED,
        LEFT_OUT,
        ALLOWED
    }

    /**
     * How it was proved.
     *
     * @param contradiction always exact
     * @param engine what found it
     * @param looked how many sets of choices were ruled out; null where the bounds alone contradict each other
     */
    public record Contradiction(
            BlendResult.Check contradiction,
            String engine,
            ProvedBy provedBy,
            @JsonInclude(Include.NON_NULL) @Nullable Integer looked) {}

    /** What proves a contradiction. */
    public enum ProvedBy {
        /** Rows that add up to it. */
        MULTIPLIERS,
        /** Every choice that the rules leave was ruled out. */
        BRANCHING
    }
}
