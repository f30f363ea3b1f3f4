package panade.certify.simplex;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearForm;

/**
 * A simplex dictionary to read and to pivot on: every basic variable, the costs and a second objective written over the
 * nonbasic variables, and how the amounts change with a parameter. Every variable, column or slack, is at least zero.
 * Columns of the model are variables 0 to n-1, the slack of row i is variable n+i; lines hold basic variables, places
 * nonbasic ones.
 */
public interface Dictionary {
    /** How many lines there are: as many as the model has rows. */
    int rows();

    /** How many places there are: as many as the model has columns. */
    int columns();

    /** The variable that is basic in a line. */
    int basic(int line);

    /** The variable that is nonbasic at a place. */
    int nonbasic(int place);

    /** The place of a nonbasic variable, or -1. */
    int placeOf(int variable);

    /** Whether the variable must be zero, such as the slack of an equation. */
    boolean locked(int variable);

    /** A basic variable over the nonbasic ones, by place. */
    Cells line(int line);

    /** What one unit of a nonbasic variable does to the basic ones, by line. */
    Cells column(int place);

    /** The amounts of the basic variables, by line. */
    Cells constants();

    /** What one unit of the parameter does to the basic variables, by line. */
    Cells parameters();

    /** The objective over the nonbasic variables, by place. */
    Cells prices();

    /** The second objective over the nonbasic variables, by place. */
    Cells directions();

    /** What one unit of the parameter does to the objective. */
    BigFraction parameterOfCost();

    /** The value of the second objective. */
    BigFraction directionNow();

    /** What one unit of the parameter does to the second objective. */
    BigFraction parameterOfDirection();

    /** How many of the units in which its slack is written one unit of a row's own slack is. */
    BigFraction slackScale(int row);

    /** Exchanges the basic variable of a line with the nonbasic variable at a place. */
    void pivot(int line, int place);

    /** Sets the parameter: how the amounts change as what a row's slack must at least be goes up, or down, by one. */
    void moveSlack(int row, int sign);

    /** Sets the second objective, by column. */
    void setDirection(LinearForm weights);

    /** Sets the second objective to minus one nonbasic variable. */
    void setDirectionToVariable(int variable);

    /** The values of the model's columns. */
    List<BigFraction> point();

    /** What each row's own slack would cost if the model's columns cost so much; zero where it is basic. */
    List<BigFraction> slackPrices(List<BigFraction> costs);

    /** An independent copy to pivot on. */
    Dictionary copy();

    /** The basis of this dictionary. */
    default Basis basis() {
        var inColumns = new HashSet<Integer>();
        var inRows = new HashSet<Integer>();
        for (int line = 0; line < rows(); line++) {
            int variable = basic(line);
            if (variable < columns()) {
                inColumns.add(variable);
            } else {
                inRows.add(variable - columns());
            }
        }
        return new Basis(inColumns, inRows);
    }

    /** The nonbasic variables that are free to come in and cost nothing. */
    default Set<Integer> tied() {
        var tied = new TreeSet<Integer>();
        var prices = prices();
        for (int j = 0; j < columns(); j++) {
            if (!locked(nonbasic(j)) && prices.sign(j) == 0) {
                tied.add(nonbasic(j));
            }
        }
        return tied;
    }
}
