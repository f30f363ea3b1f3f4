package panade.certify.simplex;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * A simplex dictionary in exact integers over one common denominator. Every variable, column or slack, is at least
 * zero; the slack of an equation is always zero and never enters. Pivots keep integers whole (Edmonds, "Systems of
 * distinct representatives and linear algebra", J. Res. NBS 71B, 1967).
 *
 * <p>Columns of the model are variables 0 to n-1; the slack of row i is variable n+i, scaled by {@link #slackScale}.
 * Mutable, and therefore confined to this package.
 */
public final class Tableau {
    private final int columnCount;
    private final int rowCount;
    private final boolean[] locked;
    private final BigFraction[] scale;
    private final BigFraction costScale;
    private final int[] basic;
    private final int[] nonbasic;
    /**
     * One line per basic variable, then the objective, then an optional second objective; last cells: constant,
     * parameter.
     */
    private final BigInteger[][] cell;

    private BigInteger denominator = BigInteger.ONE;

    /** The dictionary in which every slack is basic. */
    public Tableau(LinearModel model) {
        columnCount = model.columns().size();
        rowCount = model.rows().size();
        locked = new boolean[columnCount + rowCount];
        scale = new BigFraction[rowCount];
        basic = new int[rowCount];
        nonbasic = new int[columnCount];
        cell = new BigInteger[rowCount + 2][];
        for (int j = 0; j < columnCount; j++) {
            nonbasic[j] = j;
        }
        for (int i = 0; i < rowCount; i++) {
            basic[i] = columnCount + i;
            locked[columnCount + i] = model.rows().get(i).sense() == Sense.EQUAL;
            enter(i, model.rows().get(i));
        }
        costScale = enterCosts(model);
        cell[rowCount + 1] = zeros();
    }

    private Tableau(Tableau other) {
        columnCount = other.columnCount;
        rowCount = other.rowCount;
        locked = other.locked.clone();
        scale = other.scale;
        costScale = other.costScale;
        basic = other.basic.clone();
        nonbasic = other.nonbasic.clone();
        cell = new BigInteger[other.cell.length][];
        for (int i = 0; i < cell.length; i++) {
            cell[i] = other.cell[i].clone();
        }
        denominator = other.denominator;
    }

    /** An independent copy to pivot on. */
    public Tableau copy() {
        return new Tableau(this);
    }

    private void enter(int i, Row row) {
        var line = new ArrayList<BigFraction>();
        boolean most = row.sense() == Sense.AT_MOST;
        for (int j = 0; j < columnCount; j++) {
            var coefficient = row.form().at(j);
            line.add(most ? coefficient.negate() : coefficient);
        }
        line.add(most ? row.right() : row.right().negate());
        scale[i] = Integers.scaleOf(line);
        cell[i] = whole(line, scale[i]);
    }

    private BigFraction enterCosts(LinearModel model) {
        var line = new ArrayList<BigFraction>();
        model.columns().forEach(column -> line.add(column.cost()));
        line.add(BigFraction.ZERO);
        var factor = Integers.scaleOf(line);
        cell[rowCount] = whole(line, factor);
        return factor;
    }

    private BigInteger[] whole(List<BigFraction> line, BigFraction factor) {
        var cells = Arrays.copyOf(Integers.whole(line, factor), columnCount + 2);
        cells[columnCount + 1] = BigInteger.ZERO;
        return cells;
    }

    private BigInteger[] zeros() {
        var cells = new BigInteger[columnCount + 2];
        Arrays.fill(cells, BigInteger.ZERO);
        return cells;
    }

    public int rows() {
        return rowCount;
    }

    public int columns() {
        return columnCount;
    }

    public int basic(int i) {
        return basic[i];
    }

    public int nonbasic(int j) {
        return nonbasic[j];
    }

    /** Whether the variable must be zero, such as the slack of an equation. */
    public boolean locked(int variable) {
        return locked[variable];
    }

    /** Keeps a variable at zero from now on: where it is basic, it has to be driven out. */
    public void lock(int variable) {
        locked[variable] = true;
    }

    public BigInteger at(int i, int j) {
        return cell[i][j];
    }

    public BigInteger constant(int i) {
        return cell[i][columnCount];
    }

    public BigInteger parameter(int i) {
        return cell[i][columnCount + 1];
    }

    /** The line number of the objective. */
    public int objective() {
        return rowCount;
    }

    /** The line number of the second objective. */
    public int direction() {
        return rowCount + 1;
    }

    BigInteger denominator() {
        return denominator;
    }

    /** How many of its scaled slacks one unit of a row's own slack is. */
    public BigFraction slackScale(int row) {
        return scale[row];
    }

    /** A cell of the objective as money. */
    public BigFraction money(BigInteger objectiveCell) {
        return BigFraction.of(objectiveCell, denominator).divide(costScale);
    }

    /** How many units of the objective line one unit of money is. */
    public BigFraction costScale() {
        return costScale;
    }

    /** A cell over the common denominator. */
    public BigFraction value(BigInteger anyCell) {
        return BigFraction.of(anyCell, denominator);
    }

    /** The line in which a variable is basic, or -1. */
    int lineOf(int variable) {
        for (int i = 0; i < rowCount; i++) {
            if (basic[i] == variable) {
                return i;
            }
        }
        return -1;
    }

    /** The place of a nonbasic variable, or -1. */
    public int placeOf(int variable) {
        for (int j = 0; j < columnCount; j++) {
            if (nonbasic[j] == variable) {
                return j;
            }
        }
        return -1;
    }

    /** Exchanges the basic variable of line r with the nonbasic variable at place c. */
    public void pivot(int r, int c) {
        var pivot = cell[r][c];
        var row = cell[r];
        for (int i = 0; i < cell.length; i++) {
            if (i != r) {
                eliminate(cell[i], row, c, pivot);
            }
        }
        for (int j = 0; j < row.length; j++) {
            row[j] = j == c ? denominator : row[j].negate();
        }
        denominator = pivot;
        if (pivot.signum() < 0) {
            negateAll();
        }
        int leaving = basic[r];
        basic[r] = nonbasic[c];
        nonbasic[c] = leaving;
    }

    private void eliminate(BigInteger[] line, BigInteger[] row, int c, BigInteger pivot) {
        var factor = line[c];
        for (int j = 0; j < line.length; j++) {
            if (j == c) {
                continue;
            }
            boolean touched = factor.signum() != 0 && row[j].signum() != 0;
            if (touched) {
                line[j] = line[j].multiply(pivot)
                        .subtract(factor.multiply(row[j]))
                        .divide(denominator);
            } else if (line[j].signum() != 0) {
                line[j] = line[j].multiply(pivot).divide(denominator);
            }
        }
    }

    private void negateAll() {
        denominator = denominator.negate();
        for (var line : cell) {
            for (int j = 0; j < line.length; j++) {
                line[j] = line[j].negate();
            }
        }
    }

    /** Brings the basis close to the one given: every listed column basic that can be, against rows not listed. */
    public void bringIn(Basis basis) {
        for (int column : basis.columns().stream().sorted().toList()) {
            int place = placeOf(column);
            for (int i = 0; place >= 0 && i < rowCount; i++) {
                boolean mayLeave = basic[i] >= columnCount && !basis.rows().contains(basic[i] - columnCount);
                if (mayLeave && cell[i][place].signum() != 0) {
                    pivot(i, place);
                    break;
                }
            }
        }
    }

    /** Sets the parameter: how each constant changes when the scaled slack of a row is moved up by one. */
    public void moveSlack(int row, int sign) {
        int variable = columnCount + row;
        int place = placeOf(variable);
        int line = lineOf(variable);
        for (int i = 0; i < cell.length; i++) {
            var change = place >= 0 ? cell[i][place] : BigInteger.ZERO;
            if (i == line) {
                change = denominator.negate();
            }
            cell[i][columnCount + 1] = sign > 0 ? change : change.negate();
        }
    }

    /** Sets the second objective: whole weights on the model's columns. */
    public void setDirection(BigInteger[] weights) {
        var line = zeros();
        for (int variable = 0; variable < columnCount; variable++) {
            if (weights[variable].signum() != 0) {
                addWeighted(line, variable, weights[variable]);
            }
        }
        cell[rowCount + 1] = line;
    }

    private void addWeighted(BigInteger[] line, int variable, BigInteger weight) {
        int place = placeOf(variable);
        if (place >= 0) {
            line[place] = line[place].add(weight.multiply(denominator));
            return;
        }
        var source = cell[lineOf(variable)];
        for (int j = 0; j < line.length; j++) {
            line[j] = line[j].add(weight.multiply(source[j]));
        }
    }

    /** Makes whole weights on the model's columns the objective, in place of the costs. */
    public void setObjective(BigInteger[] weights) {
        var second = cell[rowCount + 1];
        setDirection(weights);
        cell[rowCount] = cell[rowCount + 1];
        cell[rowCount + 1] = second;
    }

    /** Sets the second objective to minus one nonbasic variable. */
    public void setDirectionToVariable(int variable) {
        var line = zeros();
        line[placeOf(variable)] = denominator.negate();
        cell[rowCount + 1] = line;
    }

    /** The values of the model's columns at this dictionary. */
    public List<BigFraction> point() {
        var point = new ArrayList<BigFraction>();
        for (int j = 0; j < columnCount; j++) {
            int line = lineOf(j);
            point.add(line < 0 ? BigFraction.ZERO : value(constant(line)));
        }
        return point;
    }

    /**
     * The multiplier of each row in a line of the dictionary, in the row's own units; zero where its slack is basic.
     */
    public List<BigFraction> multipliers(int line) {
        var multipliers = new ArrayList<BigFraction>();
        for (int i = 0; i < rowCount; i++) {
            int place = placeOf(columnCount + i);
            multipliers.add(
                    place < 0 ? BigFraction.ZERO : value(cell[line][place]).multiply(scale[i]));
        }
        return multipliers;
    }

    /** The basis of this dictionary. */
    public Basis basis() {
        var columns = new HashSet<Integer>();
        var rows = new HashSet<Integer>();
        for (int variable : basic) {
            if (variable < columnCount) {
                columns.add(variable);
            } else {
                rows.add(variable - columnCount);
            }
        }
        return new Basis(columns, rows);
    }
}
