package panade.solver.ortools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.solver.MixedAnswer;

class InterruptionTest {
    private static final Duration VERY_LONG = Duration.ofHours(2);

    @Test
    void a_search_without_an_end_in_sight_ends_when_it_is_interrupted() throws Exception {
        var scip = OrToolsMixedSolver.scip();
        var search = CompletableFuture.supplyAsync(() -> scip.solve(marketSplit(6), VERY_LONG));
        assertThatCode(() -> search.get(2, TimeUnit.SECONDS)).isInstanceOf(java.util.concurrent.TimeoutException.class);
        scip.interrupt();
        assertThat(search.get(1, TimeUnit.MINUTES) instanceof MixedAnswer.Found found && found.finished())
                .isFalse();
    }

    @Test
    void after_an_interruption_nothing_is_searched_any_more() {
        var scip = OrToolsMixedSolver.scip();
        scip.interrupt();
        assertThat(scip.solve(marketSplit(2), VERY_LONG)).isEqualTo(new MixedAnswer.Undecided("interrupted"));
    }

    /**
     * A market split problem: known for being tiny and out of reach of branch and bound (Cornuejols and Dawande, "A
     * class of hard small 0-1 programs", INFORMS J. on Computing 11, 1999; from memory).
     */
    private static MixedModel marketSplit(int markets) {
        var random = new Random(1);
        int retailers = 10 * (markets - 1);
        var columns = new ArrayList<Column>();
        var rows = new ArrayList<Row>();
        var whole = new HashSet<Integer>();
        for (int j = 0; j < retailers; j++) {
            columns.add(new Column("retailer", BigFraction.ZERO));
            whole.add(j);
            rows.add(MixedModel.limit(j, Sense.AT_MOST, BigInteger.ONE));
        }
        for (int i = 0; i < markets; i++) {
            var form = new HashMap<Integer, BigFraction>();
            int total = 0;
            for (int j = 0; j < retailers; j++) {
                int demand = 1 + random.nextInt(99);
                total += demand;
                form.put(j, BigFraction.of(demand));
            }
            for (int sign : List.of(1, -1)) {
                columns.add(new Column("off", BigFraction.ONE));
                form.put(columns.size() - 1, BigFraction.of(sign));
            }
            rows.add(new Row("market", form, Sense.EQUAL, BigFraction.of(total / 2)));
        }
        return new MixedModel(new LinearModel(columns, rows), whole);
    }
}
