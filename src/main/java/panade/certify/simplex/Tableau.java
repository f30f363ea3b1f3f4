package panade.certify.simplex;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearForm;
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
public final class Tableau implements Dictionary {
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
    /** What the second objective was multiplied by to be whole, and what one unit of the parameter is in its column. */
    private BigFraction directionScale = BigFraction.ONE;

    private BigFraction parameterScale = BigFraction.ONE;

    /** The dictionary in which every slack is basic. */
    public Tableau(LinearModel model) {
        DenseDictionaries.count();
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
        directionScale = other.directionScale;
        parameterScale = other.parameterScale;
    }

    @Override
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
        var line = new ArrayList<>(model.costs().dense(columnCount));
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

    @Override
    public int rows() {
        return rowCount;
    }

    @Override
    public int columns() {
        return columnCount;
    }

    @Override
    public int basic(int i) {
        return basic[i];
    }

    @Override
    public int nonbasic(int j) {
        return nonbasic[j];
    }

    @Override
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

    /** The line number of the objective. */
    public int objective() {
        return rowCount;
    }

    @Override
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
        return indexOf(basic, variable);
    }

    @Override
    public int placeOf(int variable) {
        return indexOf(nonbasic, variable);
    }

    private static int indexOf(int[] variables, int variable) {
        for (int k = 0; k < variables.length; k++) {
            if (variables[k] == variable) {
                return k;
            }
        }
        return -1;
    }

    @Override
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

    @Override
    public void moveSlack(int row, int sign) {
        parameterScale = scale[row];
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

    @Override
    public Cells line(int line) {
        return new Cells(cell[line], denominator);
    }

    @Override
    public Cells constants() {
        return column(columnCount);
    }

    @Override
    public Cells parameters() {
        return column(columnCount + 1).times(parameterScale);
    }

    @Override
    public Cells column(int j) {
        var cells = new BigInteger[rowCount];
        for (int i = 0; i < rowCount; i++) {
            cells[i] = cell[i][j];
        }
        return new Cells(cells, denominator);
    }

    @Override
    public Cells prices() {
        return line(objective()).times(costScale.reciprocal());
    }

    @Override
    public Cells directions() {
        return line(rowCount + 1).times(directionScale.reciprocal());
    }

    @Override
    public BigFraction parameterOfCost() {
        return money(cell[rowCount][columnCount + 1]).multiply(parameterScale);
    }

    @Override
    public BigFraction directionNow() {
        return value(constant(rowCount + 1)).divide(directionScale);
    }

    @Override
    public BigFraction parameterOfDirection() {
        return value(cell[rowCount + 1][columnCount + 1]).divide(directionScale).multiply(parameterScale);
    }

    @Override
    public void setDirection(LinearForm weights) {
        var values = weights.dense(columnCount);
        directionScale = Integers.scaleOf(values);
        cell[rowCount + 1] = written(Integers.whole(values, directionScale));
    }

    @Override
    public List<BigFraction> slackPrices(List<BigFraction> costs) {
        var other = copy();
        var factor = Integers.scaleOf(costs);
        other.setObjective(Integers.whole(costs, factor));
        return other.multipliers(objective()).stream()
                .map(price -> price.divide(factor))
                .toList();
    }

    /** Whole weights on the model's columns over the nonbasic variables. */
    private BigInteger[] written(BigInteger[] weights) {
        var line = zeros();
        for (int variable = 0; variable < columnCount; variable++) {
            if (weights[variable].signum() != 0) {
                addWeighted(line, variable, weights[variable]);
            }
        }
        return line;
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
        cell[rowCount] = written(weights);
    }

    @Override
    public void setDirectionToVariable(int variable) {
        directionScale = BigFraction.ONE;
        var line = zeros();
        line[placeOf(variable)] = denominator.negate();
        cell[rowCount + 1] = line;
    }

    @Override
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
}
