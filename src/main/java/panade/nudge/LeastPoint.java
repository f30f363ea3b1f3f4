package panade.nudge;

import java.math.BigInteger;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Branching;
import panade.certify.Decision;
import panade.certify.Verdict;
import panade.certify.Verdict.Optimum;
import panade.model.LinearModel;
import panade.model.MixedModel;
import panade.plan.Planner;
import panade.solver.Deadline;
import panade.solver.MixedAnswer;

/**
 * A cheapest point of a model, some columns of which may be switches of nought or one.
 *
 * @param optimum of the linear model that is left with the switches held
 * @param switches as they are held; empty where there are none
 * @param bound no point of the model costs less, proved in exact fractions
 */
record LeastPoint(Optimum optimum, Map<Integer, BigInteger> switches, BigFraction bound) {
    /** How long the search and the proof of one model may take together. */
    private static final Duration TIME = Duration.ofSeconds(20);

    private static final Duration SEARCH_TIME = Duration.ofSeconds(5);

    /** What one unit of the model costs at the point. */
    BigFraction cost() {
        return optimum.model().costAt(optimum.point());
    }

    /** Whether nothing costs less. */
    boolean isProved() {
        return bound.equals(cost());
    }

    /** The cheapest point as far as it can be found and proved. */
    static Decision<LeastPoint> of(Planner planner, MixedModel model) {
        return model.whole().isEmpty() ? linear(planner, model.relaxed()) : branched(planner, model);
    }

    private static Decision<LeastPoint> linear(Planner planner, LinearModel model) {
        var verdict = planner.verdict(model);
        if (verdict instanceof Optimum optimum) {
            return new Decision.Found<>(new LeastPoint(optimum, Map.of(), model.costAt(optimum.point())));
        }
        return verdict instanceof Verdict.Impossible
                ? new Decision.Impossible<>()
                : new Decision.Undecided<>(Planner.reason(verdict));
    }

    private static Decision<LeastPoint> branched(Planner planner, MixedModel model) {
        var deadline = Deadline.in(TIME);
        var found = planner.search(model, SEARCH_TIME);
        var known = held(planner, model, found);
        var proof = Branching.prove(model, known, planner::verdict, Integer.MAX_VALUE, deadline);
        var bound = proof.bound();
        if (bound == null) {
            return new Decision.Impossible<>();
        }
        if (proof.best().isEmpty()) {
            return new Decision.Undecided<>("within " + TIME.toSeconds() + " s, after " + proof.looked()
                    + " sets of choices, no blend was found, nor all were ruled out");
        }
        var switches = model.rounded(proof.best().get());
        return proved(planner, model, switches)
                .<Decision<LeastPoint>>map(optimum -> new Decision.Found<>(new LeastPoint(optimum, switches, bound)))
                .orElseGet(() -> new Decision.Undecided<>("the best choice could not be proved"));
    }

    /** The optimum with every switch held; empty where it is not proved. */
    private static Optional<Optimum> proved(Planner planner, MixedModel model, Map<Integer, BigInteger> switches) {
        return planner.verdict(model.holding(switches)) instanceof Optimum optimum
                ? Optional.of(optimum)
                : Optional.empty();
    }

    private static @Nullable List<BigFraction> held(Planner planner, MixedModel model, MixedAnswer answer) {
        return answer instanceof MixedAnswer.Found found
                ? proved(planner, model, found.values()).map(Optimum::point).orElse(null)
                : null;
    }
}
