package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.plan.Outcome.Blended;
import panade.solver.Solver;

/** Moves each plain number that a blend touches, and asks whether the cost follows the price that was told. */
record ShadowPriceCheck(RawProblem problem, Blended answer, Solver solver) {

    /** Checks all of them and tells how many moves were tried. */
    int holds() {
        int moves = 0;
        for (var bound : problem.boundsUnder("/bounds/")) {
            var limit = limit(bound);
            if (bound.per().isEmpty() && limit.touch() != null) {
                moves += followsUp(bound, limit) + followsDown(bound, limit);
            }
        }
        return moves;
    }

    private Limit limit(RawBound bound) {
        return answer.explanation().limits().stream()
                .filter(limit -> limit.path().equals(bound.path()))
                .findFirst()
                .orElseThrow();
    }

    private int followsUp(RawBound bound, Limit limit) {
        var price = limit.price();
        assertThat(price).as("price of a bound that is touched").isNotNull();
        return follows(bound, limit, Optional.ofNullable(price.whenRaised()), Optional.ofNullable(price.to()), 1);
    }

    private int followsDown(RawBound bound, Limit limit) {
        var price = limit.price();
        assertThat(price).as("price of a bound that is touched").isNotNull();
        return follows(bound, limit, Optional.ofNullable(price.whenLowered()), Optional.ofNullable(price.from()), -1);
    }

    private int follows(
            RawBound bound, Limit limit, Optional<BigFraction> rate, Optional<BigFraction> end, int direction) {
        var number = (limit.touch() == Side.MIN ? bound.min() : bound.max()).orElseThrow();
        var step = rate.isEmpty() ? BigFraction.of(direction, 1000) : step(number, end, direction);
        // Cut towards the old number, so that a move of a tenth never becomes more than that.
        var moved = number.add(Exact.decimal(step, 12, RoundingMode.DOWN));
        var changed = moved(bound, limit.touch(), moved);
        if (moved.compareTo(number) == 0 || isRefused(changed)) {
            return 0;
        }
        if (rate.isEmpty()) {
            assertThat(Answer.to(problem.replacing(changed), solver))
                    .as("beyond the end of %s", bound.path())
                    .isNotInstanceOf(Blended.class);
            return 1;
        }
        var by = Exact.of(moved.subtract(number)).multiply(direction);
        var cost = answer.blend().costPerKg().add(rate.orElseThrow().multiply(by));
        assertThat(Answer.cost(problem.replacing(changed), solver))
                .as("%s moved to %s", bound.path(), moved)
                .isEqualTo(cost);
        return 1;
    }

    /** A tenth of the interval, or of the number where there is no end. */
    private static BigFraction step(BigDecimal number, Optional<BigFraction> end, int direction) {
        var from = Exact.of(number);
        return end.map(to -> to.subtract(from))
                .orElse(from.abs().multiply(direction))
                .divide(10);
    }

    private static RawBound moved(RawBound bound, @Nullable Side touch, BigDecimal number) {
        return bound.with(
                touch == Side.MAX ? bound.min() : Optional.of(number),
                touch == Side.MIN ? bound.max() : Optional.of(number));
    }

    /** A document may not say a share outside 0 to 100 %, a negative weight or a floor above its ceiling. */
    private static boolean isRefused(RawBound bound) {
        var floor = bound.min().or(bound::max).orElseThrow();
        var ceiling = bound.max().or(bound::min).orElseThrow();
        boolean isShare = bound.unit().equals("%");
        boolean isOutside = isShare && ceiling.compareTo(BigDecimal.valueOf(100)) > 0;
        boolean isNegative = !bound.unit().isEmpty() && floor.signum() < 0;
        return isOutside || isNegative || floor.compareTo(ceiling) > 0;
    }
}
