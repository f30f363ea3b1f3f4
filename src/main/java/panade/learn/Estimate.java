package panade.learn;

import java.util.List;

/** What came of fitting a model. */
public sealed interface Estimate permits Fit, Estimate.NotSeparable {
    /**
     * The observations cannot tell some terms from others: these depend on the terms before them.
     *
     * @param terms positions in the model's terms; none if it is the blocks that cannot be told apart
     */
    record NotSeparable(List<Integer> terms) implements Estimate {
        public NotSeparable {
            terms = List.copyOf(terms);
        }
    }
}
