package panade.certify;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.solver.Deadline;

/** Branch and bound when its time is over. */
class BranchingTest {
    private static final int MAX_BRANCHES = 100;

    @Test
    void withoutTimeNothingIsSaidToBeImpossible() {
        var proof = Branching.prove(halves(), null, Prover.EXACT, MAX_BRANCHES, Deadline.in(Duration.ZERO));
        assertThat(proof.isImpossible()).isFalse();
        assertThat(proof.best()).isEmpty();
    }

    @Test
    void withTimeTheSameIsProvedImpossible() {
        var proof = Branching.prove(halves(), null, Prover.EXACT, MAX_BRANCHES, Deadline.in(Duration.ofMinutes(1)));
        assertThat(proof.isImpossible()).isTrue();
    }

    @Test
    void aDeadlineWithinAnotherIsNeverTheLaterOfTheTwo() {
        var over = Deadline.in(Duration.ZERO);
        assertThat(over.within(Duration.ofMinutes(1)).isOver()).isTrue();
        assertThat(Deadline.in(Duration.ofMinutes(1)).left(Duration.ofSeconds(2)))
                .isEqualTo(Duration.ofSeconds(2));
    }

    /** Twice a whole number is never five. */
    private static MixedModel halves() {
        var columns = List.of(cost("a", 3), cost("b", 4), cost("c", 5));
        var rows = new ArrayList<Row>();
        var twice = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < columns.size(); j++) {
            twice.put(j, BigFraction.of(2));
            rows.add(MixedModel.limit(j, Sense.AT_MOST, BigInteger.ONE));
        }
        rows.add(new Row("five", Map.copyOf(twice), Sense.EQUAL, BigFraction.of(5)));
        return new MixedModel(new LinearModel(columns, rows), Set.of(0, 1, 2));
    }

    private static Column cost(String name, int cost) {
        return new Column(name, BigFraction.of(cost));
    }
}
