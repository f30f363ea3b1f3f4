package panade.certify;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import panade.certify.sensitivity.Sensitivity;
import panade.model.Basis;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.solver.SolverAnswer;
import panade.testing.RepeatableSeeds;
import panade.testing.Vertices;

/** Small models whose corners are all tried out: what is certified, and what is said of it, against those corners. */
class EnumeratedModelsTest {
    private static final SolverAnswer SILENCE = new SolverAnswer.Undecided("no solver here");
    private static final BigFraction HAIR = BigFraction.of(1, 1_000_000);
    private static final int MODELS = 150;

    static IntStream models() {
        return IntStream.range(0, MODELS);
    }

    @Test
    void the_models_are_of_all_kinds() {
        var corners = models().mapToObj(number -> Vertices.of(model(number))).toList();
        var found = corners.stream().filter(each -> !each.points().isEmpty()).toList();
        assertThat(found).hasSizeBetween(MODELS / 2, MODELS * 9 / 10);
        assertThat(found.stream().filter(each -> each.cheapest().size() > 1)).hasSizeGreaterThan(MODELS / 20);
    }

    @ParameterizedTest
    @MethodSource("models")
    void the_least_cost_is_that_of_the_cheapest_corner_from_whatever_basis(int number) {
        var model = model(number);
        var least = Vertices.of(model).leastCost();
        assertThat(cost(model, SILENCE)).isEqualTo(least);
        assertThat(cost(model, new SolverAnswer.Infeasible())).isEqualTo(least);
        var random = new Random(number);
        for (int i = 0; i < 4; i++) {
            assertThat(cost(model, new SolverAnswer.Optimal(basis(model, random))))
                    .isEqualTo(least);
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void a_rate_holds_as_far_as_it_reaches_and_no_further(int number) {
        var model = model(number);
        optima(model).forEach(optimum -> {
            var sensitivity = new Sensitivity(optimum);
            for (int row = 0; row < model.rows().size(); row++) {
                checkRate(model, row, sensitivity.raising(row), BigFraction.ONE);
                checkRate(model, row, sensitivity.lowering(row), BigFraction.ONE.negate());
            }
        });
    }

    private static void checkRate(LinearModel model, int row, Optional<Sensitivity.Rate> told, BigFraction direction) {
        if (told.isEmpty()) {
            assertThat(moved(model, row, direction.multiply(HAIR))).isEmpty();
            return;
        }
        var rate = told.get();
        var reach = rate.reach() == null ? BigFraction.of(1000) : rate.reach();
        assertThat(reach.signum()).isPositive();
        var least = Vertices.of(model).leastCost().orElseThrow();
        for (var part : List.of(BigFraction.ONE, BigFraction.of(1, 3))) {
            var way = reach.multiply(part);
            assertThat(moved(model, row, direction.multiply(way)))
                    .contains(least.add(rate.rate().multiply(way)));
        }
        if (rate.reach() != null) {
            var beyond = reach.add(HAIR);
            assertThat(moved(model, row, direction.multiply(beyond)))
                    .isNotEqualTo(Optional.of(least.add(rate.rate().multiply(beyond))));
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void a_price_leaves_the_blend_alone_until_its_breakpoint(int number) {
        var model = model(number);
        optima(model).forEach(optimum -> {
            var sensitivity = new Sensitivity(optimum);
            var least = model.costAt(optimum.point());
            for (int column = 0; column < model.columns().size(); column++) {
                var used = optimum.point().get(column);
                for (int sign : List.of(1, -1)) {
                    var told = sensitivity.movingPrice(LinearForm.of(column, BigFraction.ONE), sign);
                    assertThat(sensitivity.priceLimit(LinearForm.of(column, BigFraction.ONE), sign))
                            .isEqualTo(told.map(Sensitivity.Breakpoint::by));
                    var by = told.map(Sensitivity.Breakpoint::by).orElse(BigFraction.of(1000));
                    assertThat(priced(model, column, by.multiply(sign)))
                            .isEqualTo(least.add(by.multiply(sign).multiply(used)));
                    var beyond = by.add(HAIR).multiply(sign);
                    assertThat(priced(model, column, beyond).equals(least.add(beyond.multiply(used))))
                            .as("linear beyond %s of column %s", by, column)
                            .isEqualTo(told.isEmpty());
                    int at = column;
                    told.ifPresent(turn -> assertThat(
                                    turn.after().get(at).subtract(used).signum())
                            .isEqualTo(-sign));
                }
            }
        });
    }

    @ParameterizedTest
    @MethodSource("models")
    void what_is_unused_comes_in_just_below_its_entering_price(int number) {
        var model = model(number);
        optima(model).forEach(optimum -> {
            var corners = Vertices.of(model);
            var least = corners.leastCost().orElseThrow();
            for (int column = 0; column < model.columns().size(); column++) {
                int at = column;
                if (optimum.point().get(column).signum() != 0) {
                    continue;
                }
                var told = new Sensitivity(optimum).entering(LinearForm.of(column, BigFraction.ONE), Set.of(column));
                assertThat(told.isPresent())
                        .isEqualTo(corners.points().stream()
                                .anyMatch(point -> point.get(at).signum() > 0));
                told.ifPresent(entrance -> {
                    var by = entrance.by();
                    assertThat(priced(model, at, by.negate())).isEqualTo(least);
                    assertThat(Vertices.compare(priced(model, at, by.add(HAIR).negate()), least))
                            .isNegative();
                    assertThat(entrance.after().get(at).signum()).isPositive();
                    assertThat(atPrice(model, at, by.negate()).costAt(entrance.after()))
                            .isEqualTo(least);
                });
            }
        });
    }

    @ParameterizedTest
    @MethodSource("models")
    void extremes_are_taken_over_all_cheapest_corners(int number) {
        var model = model(number);
        optima(model).forEach(optimum -> {
            var corners = Vertices.of(model);
            var sensitivity = new Sensitivity(optimum);
            for (int column = 0; column < model.columns().size(); column++) {
                int at = column;
                for (boolean most : List.of(true, false)) {
                    assertThat(sensitivity.extreme(LinearForm.of(column, BigFraction.ONE), most))
                            .isEqualTo(corners.extreme(point -> point.get(at), most));
                }
            }
        });
    }

    @ParameterizedTest
    @MethodSource("models")
    void the_dense_dictionary_and_the_sparse_one_say_the_same(int number) {
        var model = model(number);
        var optima = optima(model).stream().map(Sensitivity::new).toList();
        for (int row = 0; !optima.isEmpty() && row < model.rows().size(); row++) {
            for (int column = 0; column < model.columns().size(); column++) {
                var form = LinearForm.of(column, BigFraction.of(2, 3));
                for (boolean up : List.of(true, false)) {
                    assertThat(optima.get(1).ratioReach(row, form, up))
                            .isEqualTo(optima.get(0).ratioReach(row, form, up));
                }
            }
        }
        for (int column = 0; !optima.isEmpty() && column < model.columns().size(); column++) {
            var price = LinearForm.of(column, BigFraction.of(3, 2));
            assertThat(optima.get(1).raisingPriceForEver(price).stream()
                            .map(Sensitivity.Breakpoint::by)
                            .toList())
                    .isEqualTo(optima.get(0).raisingPriceForEver(price).stream()
                            .map(Sensitivity.Breakpoint::by)
                            .toList());
        }
    }

    /**
     * The optimum as pivots find it, and as its basis is confirmed when it is claimed: read off a dictionary or not.
     */
    private static List<Verdict.Optimum> optima(LinearModel model) {
        if (!(Certifier.certify(model, SILENCE, "test") instanceof Verdict.Optimum pivoted)) {
            return List.of();
        }
        var claimed = (Verdict.Optimum)
                Certifier.confirm(model, pivoted.basis(), "test").orElseThrow();
        assertThat(pivoted.claimedBasis()).isEmpty();
        assertThat(claimed.claimedBasis()).isPresent();
        return List.of(pivoted, claimed);
    }

    private static Optional<BigFraction> cost(LinearModel model, SolverAnswer answer) {
        var verdict = Certifier.certify(model, answer, "test");
        if (verdict instanceof Verdict.Optimum optimum) {
            return Optional.of(model.costAt(optimum.point()));
        }
        assertThat(verdict).isInstanceOf(Verdict.Impossible.class);
        return Optional.empty();
    }

    private static Optional<BigFraction> moved(LinearModel model, int row, BigFraction by) {
        var rows = new ArrayList<>(model.rows());
        var old = rows.get(row);
        rows.set(row, new Row(old.name(), old.form(), old.sense(), old.right().add(by)));
        return Vertices.of(new LinearModel(model.columns(), rows)).leastCost();
    }

    private static BigFraction priced(LinearModel model, int column, BigFraction by) {
        return Vertices.of(atPrice(model, column, by)).leastCost().orElseThrow();
    }

    private static LinearModel atPrice(LinearModel model, int column, BigFraction by) {
        var costs = new ArrayList<BigFraction>();
        for (int j = 0; j < model.columns().size(); j++) {
            var cost = model.columns().get(j).cost();
            costs.add(j == column ? cost.add(by) : cost);
        }
        return model.withCosts(costs);
    }

    /** Shares that add to one, under a few rows of small whole numbers, many of them degenerate. */
    private static LinearModel model(int number) {
        var random = new Random(RepeatableSeeds.seed("EnumeratedModelsTest") + number);
        int n = 2 + random.nextInt(3);
        var columns = new ArrayList<Column>();
        var shares = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < n; j++) {
            columns.add(new Column("c" + j, BigFraction.of(random.nextInt(7))));
            shares.put(j, BigFraction.ONE);
        }
        var rows = new ArrayList<Row>();
        rows.add(new Row("all", shares, Sense.EQUAL, BigFraction.ONE));
        int more = 1 + random.nextInt(3);
        for (int i = 0; i < more; i++) {
            var terms = new HashMap<Integer, BigFraction>();
            for (int j = 0; j < n; j++) {
                terms.put(j, BigFraction.of(random.nextInt(9) - 2));
            }
            var sense = random.nextInt(10) == 0 ? Sense.EQUAL : random.nextBoolean() ? Sense.AT_LEAST : Sense.AT_MOST;
            rows.add(new Row("r" + i, terms, sense, BigFraction.of(random.nextInt(7) - 1, 1 + random.nextInt(2))));
        }
        return new LinearModel(columns, rows);
    }

    /** As many tight rows and used columns as drawn: right, wrong or singular. */
    private static Basis basis(LinearModel model, Random random) {
        var used = new TreeSet<Integer>();
        var tight = new TreeSet<Integer>();
        for (int j = 0; j < model.columns().size(); j++) {
            if (random.nextBoolean()) {
                used.add(j);
            }
        }
        for (int i = 0; i < model.rows().size(); i++) {
            if (random.nextBoolean()) {
                tight.add(i);
            }
        }
        return new Basis(used, tight);
    }
}
