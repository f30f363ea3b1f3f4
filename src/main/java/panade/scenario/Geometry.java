package panade.scenario;

import java.util.BitSet;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/**
 * A model's rows as slacks in binary floating point: slack = right . columns - constant, each line brought to size one.
 * Variables are the columns, then the slacks.
 */
final class Geometry {
    private final int columns;
    private final double[][] lines;
    private final boolean[] locked;

    Geometry(LinearModel model) {
        columns = model.columns().size();
        lines = model.rows().stream().map(this::line).toArray(double[][]::new);
        locked = new boolean[columns + lines.length];
        for (int i = 0; i < lines.length; i++) {
            locked[columns + i] = model.rows().get(i).sense() == Sense.EQUAL;
        }
    }

    private double[] line(Row row) {
        var line = new double[columns + 1];
        double sign = row.sense() == Sense.AT_MOST ? -1 : 1;
        var largest = row.form().isZero() ? BigFraction.ONE : row.form().largest();
        row.form().forEach((j, value) -> line[j] = sign * value.divide(largest).doubleValue());
        line[columns] = -sign * row.right().divide(largest).doubleValue();
        return line;
    }

    int columns() {
        return columns;
    }

    int rows() {
        return lines.length;
    }

    int variables() {
        return columns + lines.length;
    }

    /** Whether a variable must stay at zero: the slack of an equation. */
    boolean isLocked(int variable) {
        return locked[variable];
    }

    /** A line's coefficients, then its constant; not to be changed. */
    double[] line(int row) {
        return lines[row];
    }

    /** The variables of a basis. */
    BitSet variables(Basis basis) {
        var variables = new BitSet(variables());
        basis.columns().forEach(variables::set);
        basis.rows().forEach(row -> variables.set(columns + row));
        return variables;
    }

    /** The basis that some variables make. */
    Basis basis(BitSet variables) {
        var all = variables.stream().boxed().toList();
        return new Basis(
                Set.copyOf(all.stream().filter(each -> each < columns).toList()),
                Set.copyOf(all.stream()
                        .filter(each -> each >= columns)
                        .map(each -> each - columns)
                        .toList()));
    }
}
