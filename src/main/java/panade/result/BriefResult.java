package panade.result;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What came of a brief: a blend, the proof that there is none, or nothing that could be proved. */
public sealed interface BriefResult permits BlendResult, NoBlendResult, BriefResult.Undecided {
    /** Which of the three it is. */
    enum Status {
        OPTIMAL,
        INFEASIBLE,
        UNDECIDED
    }

    /** What each of the three cases comes to. */
    default <R> R fold(
            Function<BlendResult, R> blend, Function<NoBlendResult, R> none, Function<Undecided, R> undecided) {
        if (this instanceof BlendResult found) {
            return blend.apply(found);
        }
        return this instanceof NoBlendResult proof ? none.apply(proof) : undecided.apply((Undecided) this);
    }

    /**
     * Nothing that could be proved.
     *
     * @param reason why not
     * @param remarks on the documents; null where this is a part of a larger result, or no document is concerned
     */
    record Undecided(
            Status status,
            String reason,
            @JsonInclude(Include.NON_NULL) @Nullable List<RemarkLine> remarks) implements BriefResult {
        /** What keeps a command from its answer. */
        public static Undecided because(String reason) {
            return new Undecided(Status.UNDECIDED, reason, null);
        }
    }
}
