package panade.padic;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Solves {@code A x = b} and {@code y A = c} exactly: digit by digit to a prime base from one factorisation modulo the
 * prime (Dixon, "Exact solution of linear equations using p-adic expansions", Numerische Mathematik 40, 1982). Every
 * answer has been multiplied out again; where the matrix is singular, or is so modulo the prime, there is none.
 */
public final class PadicSystem {
    private static final int FIRST_TRY = 4;

    private final SquareMatrix matrix;
    private final SquareMatrix transposed;
    private final ModularFactors factors;

    private PadicSystem(SquareMatrix matrix, ModularFactors factors) {
        this.matrix = matrix;
        this.transposed = matrix.transposed();
        this.factors = factors;
    }

    /** The system of a matrix; empty where it cannot be solved in this way. */
    public static Optional<PadicSystem> of(SquareMatrix matrix) {
        return ModularFactors.of(matrix).map(factors -> new PadicSystem(matrix, factors));
    }

    /** The solution of {@code A x = right}. */
    public Optional<List<BigFraction>> solve(List<BigInteger> right) {
        return lift(matrix, right, factors::solve);
    }

    /** The solution of {@code y A = right}. */
    public Optional<List<BigFraction>> solveTransposed(List<BigInteger> right) {
        return lift(transposed, right, factors::solveTransposed);
    }

    private static Optional<List<BigFraction>> lift(
            SquareMatrix matrix, List<BigInteger> right, UnaryOperator<long[]> solver) {
        var lift = Lift.of(matrix, right, solver);
        int bits = 2 * matrix.bits(right) + 2;
        int nextTry = FIRST_TRY;
        var modulus = BigInteger.ONE;
        for (int digits = 1; modulus.bitLength() <= bits + Integer.SIZE; digits++) {
            lift.digit();
            modulus = modulus.multiply(Residues.BIG_PRIME);
            if (digits >= nextTry || modulus.bitLength() > bits) {
                var solution = Reconstruction.of(lift.values(), modulus)
                        .filter(candidate -> matrix.productEquals(candidate, right));
                if (solution.isPresent()) {
                    return solution;
                }
                nextTry = digits + digits / 2;
            }
        }
        return Optional.empty();
    }
}
