package panade.padic;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Fractions from their residues modulo a large number (Wang, "A p-adic algorithm for univariate partial fractions",
 * SYMSAC 1981): the only fraction whose numerator and denominator are both small enough, if there is one.
 */
final class Reconstruction {
    private final BigInteger modulus;
    private final BigInteger largest;
    /** The denominator found last: the entries of a solution mostly share theirs. */
    private BigInteger denominator = BigInteger.ONE;

    private Reconstruction(BigInteger modulus) {
        this.modulus = modulus;
        this.largest = modulus.shiftRight(1).sqrt();
    }

    /** The fractions; empty where one of the residues has none. */
    static Optional<List<BigFraction>> of(BigInteger[] residues, BigInteger modulus) {
        var reconstruction = new Reconstruction(modulus);
        var fractions = new ArrayList<BigFraction>();
        for (var residue : residues) {
            var fraction = reconstruction.fraction(residue);
            if (fraction.isEmpty()) {
                return Optional.empty();
            }
            fractions.add(fraction.get());
        }
        return Optional.of(fractions);
    }

    private Optional<BigFraction> fraction(BigInteger residue) {
        var numerator = residue.multiply(denominator).mod(modulus);
        if (numerator.compareTo(largest) > 0) {
            numerator = numerator.subtract(modulus);
        }
        return numerator.abs().compareTo(largest) <= 0
                ? Optional.of(BigFraction.of(numerator, denominator))
                : afresh(residue);
    }

    /** Euclid's algorithm, stopped half way. */
    private Optional<BigFraction> afresh(BigInteger residue) {
        var older = modulus;
        var newer = residue;
        var olderFactor = BigInteger.ZERO;
        var factor = BigInteger.ONE;
        while (newer.compareTo(largest) > 0) {
            var parts = older.divideAndRemainder(newer);
            older = newer;
            newer = parts[1];
            var next = olderFactor.subtract(parts[0].multiply(factor));
            olderFactor = factor;
            factor = next;
        }
        if (factor.abs().compareTo(largest) > 0) {
            return Optional.empty();
        }
        denominator = factor.abs();
        return Optional.of(BigFraction.of(factor.signum() < 0 ? newer.negate() : newer, denominator));
    }
}
