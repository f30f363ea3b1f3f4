package panade.certify;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import panade.model.Unproved;

/**
 * What is known of a question that has an answer or provably none: not to know is a third case of its own, and no
 * reader gets at the answer without saying what becomes of the other two.
 */
public sealed interface Decision<T> {
    /** An answer that was checked. */
    record Found<T>(T value) implements Decision<T> {}

    /** Proved to have no answer. */
    record Impossible<T>() implements Decision<T> {}

    /**
     * Neither an answer nor proof that there is none.
     *
     * @param reason why, as a clause without a full stop
     */
    record Undecided<T>(String reason) implements Decision<T> {}

    /** What each of the three cases comes to. */
    default <R> R fold(Function<T, R> found, Supplier<R> impossible, Function<String, R> undecided) {
        if (this instanceof Found<T> answer) {
            return found.apply(answer.value());
        }
        return this instanceof Undecided<T> open ? undecided.apply(open.reason()) : impossible.get();
    }

    /** The same of something made of the answer. */
    default <R> Decision<R> map(Function<T, R> next) {
        return fold(value -> new Found<>(next.apply(value)), Impossible::new, Undecided::new);
    }

    /** The answer where there is one, for readers that leave the other two cases to somebody else. */
    default Optional<T> found() {
        return fold(Optional::of, Optional::empty, reason -> Optional.empty());
    }

    /** An answer; empty when it is proved that there is none. Not to know ends the work that needs to know. */
    default Optional<T> orUndecided() {
        return fold(Optional::of, Optional::empty, reason -> {
            throw new Unproved(reason);
        });
    }

    /** The answer to a question that is known to have one. */
    default T orElseThrow() {
        return orUndecided().orElseThrow();
    }
}
