package panade.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.learn.Term;

/**
 * A trial as far as it matters to what is learned: the row of the model at its levers, not what will be measured.
 *
 * @param row the values of the model's terms
 * @param weight how much it counts, one for a usual trial
 */
public record Run(List<BigFraction> row, BigFraction weight) {
    public Run {
        row = List.copyOf(row);
    }

    /** A usual trial where the levers have these values. */
    public static Run at(List<Term> terms, List<BigFraction> levers) {
        return usual(terms.stream().map(term -> term.at(levers)).toList());
    }

    /** A usual trial of that row. */
    static Run usual(List<BigFraction> row) {
        return new Run(row, BigFraction.ONE);
    }

    /**
     * What is believed of one coefficient, which counts as a trial of it alone.
     *
     * @param precision the error's variance divided by the coefficient's
     */
    public static Run belief(int terms, int term, BigFraction precision) {
        var row = new ArrayList<>(Collections.nCopies(terms, BigFraction.ZERO));
        row.set(term, BigFraction.ONE);
        return new Run(row, precision);
    }
}
