package panade.padic;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Square systems solved exactly, in both directions. */
class PadicSystemTest {
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void a_system_made_from_its_solution_gives_the_solution_back(
            @ForAll @IntRange(min = 1, max = 25) int size, @ForAll long seed) {
        var random = new Random(seed);
        var matrix = matrix(size, random);
        var solution = IntStream.range(0, size)
                .mapToObj(i -> BigInteger.valueOf(random.nextInt(2001) - 1000)
                        .multiply(BigInteger.ONE.shiftLeft(random.nextInt(60))))
                .toList();
        PadicSystem.of(new SquareMatrix(matrix)).ifPresent(system -> {
            assertThat(system.solve(times(matrix, solution)).orElseThrow()).isEqualTo(fractions(solution));
            var turned = transposed(matrix);
            assertThat(system.solveTransposed(times(turned, solution)).orElseThrow())
                    .isEqualTo(fractions(solution));
        });
    }

    /**
     * The inverse of the Hilbert matrix is whole, with entries known in closed form (Choi, "Tricks or treats with the
     * Hilbert matrix", American Mathematical Monthly 90, 1983; from memory). Doubles lose it at size 13.
     */
    @Test
    void the_inverse_of_the_Hilbert_matrix_of_size_twenty_comes_out_as_published() {
        int n = 20;
        var multiple = IntStream.rangeClosed(1, 2 * n)
                .mapToObj(BigInteger::valueOf)
                .reduce(BigInteger.ONE, (a, b) -> a.multiply(b).divide(a.gcd(b)));
        var rows = new ArrayList<Map<Integer, BigInteger>>();
        for (int i = 0; i < n; i++) {
            var row = new HashMap<Integer, BigInteger>();
            for (int j = 0; j < n; j++) {
                row.put(j, multiple.divide(BigInteger.valueOf(i + j + 1)));
            }
            rows.add(row);
        }
        var system = PadicSystem.of(new SquareMatrix(rows)).orElseThrow();
        for (int column = 0; column < n; column++) {
            var right = new ArrayList<BigInteger>();
            for (int i = 0; i < n; i++) {
                right.add(i == column ? multiple : BigInteger.ZERO);
            }
            var inverse = system.solve(right).orElseThrow();
            for (int i = 0; i < n; i++) {
                assertThat(inverse.get(i)).isEqualTo(BigFraction.of(hilbertInverse(n, i + 1, column + 1)));
            }
        }
    }

    /** What is carried from digit to digit would not fit in 64 bits where a line's entries add up to much more. */
    @ParameterizedTest
    @ValueSource(ints = {20, 40, 58, 60, 61, 62, 63, 64, 80})
    void entries_of_any_size_are_solved_with(int bits) {
        var random = new Random(bits);
        var rows = new ArrayList<Map<Integer, BigInteger>>();
        for (int i = 0; i < 6; i++) {
            var row = new HashMap<Integer, BigInteger>();
            for (int j = 0; j < 6; j++) {
                row.put(j, BigInteger.ONE.shiftLeft(bits).subtract(BigInteger.valueOf(1 + random.nextInt(1_000_000))));
            }
            rows.add(row);
        }
        var solution = IntStream.range(0, 6)
                .mapToObj(i -> BigInteger.valueOf(random.nextInt(2001) - 1000))
                .toList();
        var system = PadicSystem.of(new SquareMatrix(rows)).orElseThrow();
        assertThat(system.solve(times(rows, solution)).orElseThrow()).isEqualTo(fractions(solution));
        assertThat(system.solve(times(rows, unit())).orElseThrow()).isEqualTo(fractions(unit()));
    }

    private static List<BigInteger> unit() {
        return IntStream.range(0, 6)
                .mapToObj(i -> i == 0 ? BigInteger.ONE : BigInteger.ZERO)
                .toList();
    }

    @Test
    void a_singular_system_has_no_answer() {
        var row = Map.of(0, BigInteger.ONE, 1, BigInteger.TWO);
        assertThat(PadicSystem.of(new SquareMatrix(List.of(row, row)))).isEmpty();
    }

    private static BigInteger hilbertInverse(int n, int i, int j) {
        var middle = binomial(i + j - 2, i - 1);
        var value = BigInteger.valueOf(i + j - 1)
                .multiply(binomial(n + i - 1, n - j))
                .multiply(binomial(n + j - 1, n - i))
                .multiply(middle.pow(2));
        return (i + j) % 2 == 0 ? value : value.negate();
    }

    private static BigInteger binomial(int n, int k) {
        var value = BigInteger.ONE;
        for (int i = 0; i < k; i++) {
            value = value.multiply(BigInteger.valueOf(n - i)).divide(BigInteger.valueOf(i + 1));
        }
        return value;
    }

    /** Mostly zeros, as in the models that are solved. */
    private static List<Map<Integer, BigInteger>> matrix(int size, Random random) {
        var rows = new ArrayList<Map<Integer, BigInteger>>();
        for (int i = 0; i < size; i++) {
            var row = new HashMap<Integer, BigInteger>();
            row.put((i * 7 + 3) % size, BigInteger.valueOf(1 + random.nextInt(1_000_000)));
            for (int k = 0; k < 3; k++) {
                row.put(
                        random.nextInt(size),
                        BigInteger.valueOf(1 + random.nextInt(1_000_000)).negate());
            }
            rows.add(row);
        }
        return rows;
    }

    private static List<Map<Integer, BigInteger>> transposed(List<Map<Integer, BigInteger>> matrix) {
        var turned = new ArrayList<Map<Integer, BigInteger>>();
        matrix.forEach(row -> turned.add(new HashMap<>()));
        for (int i = 0; i < matrix.size(); i++) {
            for (var term : matrix.get(i).entrySet()) {
                turned.get(term.getKey()).put(i, term.getValue());
            }
        }
        return turned;
    }

    private static List<BigInteger> times(List<Map<Integer, BigInteger>> matrix, List<BigInteger> vector) {
        return matrix.stream()
                .map(row -> row.entrySet().stream()
                        .map(term -> term.getValue().multiply(vector.get(term.getKey())))
                        .reduce(BigInteger.ZERO, BigInteger::add))
                .toList();
    }

    private static List<BigFraction> fractions(List<BigInteger> values) {
        return values.stream().map(BigFraction::of).toList();
    }
}
