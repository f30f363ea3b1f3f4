package panade.plan;

import java.util.function.Function;

/** Something found, or the proof that there is none. */
sealed interface OrProof<T> {
    /** What was found. */
    record Found<T>(T value) implements OrProof<T> {}

    /** Why there is none. */
    record None<T>(Contradiction proof) implements OrProof<T> {}

    /** What either case comes to. */
    default <R> R fold(Function<T, R> found, Function<Contradiction, R> none) {
        return this instanceof Found<T> some ? found.apply(some.value()) : none.apply(((None<T>) this).proof());
    }

    /** The same of something made of what was found. */
    default <R> OrProof<R> map(Function<T, R> next) {
        return fold(value -> new Found<>(next.apply(value)), None::new);
    }
}
