package panade.certify.simplex;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/** After every pivot, whatever was asked before it, a dictionary says of each cell what the model's own rows say. */
class SparseDictionaryTest {
    private static final int COLUMNS = 6;
    private static final int PIVOTS = 12;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void everyCellIsWhatTheModelSaysAfterEveryPivot(long seed) {
        var random = new Random(seed);
        var model = model(random);
        var slacks =
                new Basis(Set.of(), Set.copyOf(IntStream.range(0, 7).boxed().toList()));
        var dictionary = SparseDictionary.of(model, slacks).orElseThrow();
        int pivots = 0;
        for (int step = 0; step < PIVOTS; step++) {
            check(model, dictionary);
            int line = random.nextInt(dictionary.rows());
            int place = random.nextInt(dictionary.columns());
            if (dictionary.line(line).sign(place) != 0) {
                dictionary.pivot(line, place);
                pivots++;
            }
        }
        check(model, dictionary);
        assertThat(pivots).isGreaterThan(PIVOTS / 3);
    }

    private static void check(LinearModel model, SparseDictionary dictionary) {
        for (int place = 0; place < dictionary.columns(); place++) {
            var column = dictionary.column(place);
            var change = change(dictionary, place);
            for (int variable = 0; variable < COLUMNS + model.rows().size(); variable++) {
                int line = lineOf(dictionary, variable);
                var told = line >= 0
                        ? column.value(line)
                        : variable == dictionary.nonbasic(place) ? BigFraction.ONE : BigFraction.ZERO;
                assertThat(told).isEqualTo(moved(model, variable, change));
                if (line >= 0) {
                    assertThat(dictionary.line(line).value(place)).isEqualTo(told);
                }
            }
        }
    }

    /** By how much each of the model's columns changes as the variable at a place grows by one. */
    private static List<BigFraction> change(SparseDictionary dictionary, int place) {
        var change = new ArrayList<BigFraction>();
        for (int j = 0; j < COLUMNS; j++) {
            int line = lineOf(dictionary, j);
            change.add(
                    line >= 0
                            ? dictionary.column(place).value(line)
                            : j == dictionary.nonbasic(place) ? BigFraction.ONE : BigFraction.ZERO);
        }
        return change;
    }

    /** What that does to a variable, by the model alone: a column as it changes, or what is to spare in a row. */
    private static BigFraction moved(LinearModel model, int variable, List<BigFraction> change) {
        if (variable < COLUMNS) {
            return change.get(variable);
        }
        var row = model.rows().get(variable - COLUMNS);
        var more = row.activity(change);
        return row.sense() == Sense.AT_MOST ? more.negate() : more;
    }

    private static int lineOf(SparseDictionary dictionary, int variable) {
        return IntStream.range(0, dictionary.rows())
                .filter(line -> dictionary.basic(line) == variable)
                .findFirst()
                .orElse(-1);
    }

    private static LinearModel model(Random random) {
        var columns = new ArrayList<Column>();
        for (int j = 0; j < COLUMNS; j++) {
            columns.add(new Column("c" + j, BigFraction.of(1 + random.nextInt(9))));
        }
        var rows = new ArrayList<Row>();
        for (int i = 0; i < 7; i++) {
            var terms = new HashMap<Integer, BigFraction>();
            for (int j = 0; j < COLUMNS; j++) {
                terms.put(j, BigFraction.of(random.nextInt(19) - 9, 1 + random.nextInt(4)));
            }
            var sense = random.nextBoolean() ? Sense.AT_LEAST : Sense.AT_MOST;
            rows.add(new Row("r" + i, terms, sense, BigFraction.of(random.nextInt(9))));
        }
        return new LinearModel(columns, rows);
    }
}
