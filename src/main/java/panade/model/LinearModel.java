package panade.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Minimise {@code cost . x} over {@code x >= 0} subject to one-sided rows and equations, all in exact numbers.
 *
 * @param columns the variables, none below zero
 * @param rows what they must meet
 */
public record LinearModel(List<Column> columns, List<Row> rows) {
    public LinearModel {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** A variable that may not be negative, and what one unit of it costs. */
    public record Column(String name, BigFraction cost) {}

    /**
     * One requirement: the sum of coefficient times column is at least, at most or exactly the right side.
     *
     * @param name where it comes from
     * @param form the left side
     * @param sense which way
     * @param right the right side
     */
    public record Row(String name, LinearForm form, Sense sense, BigFraction right) {
        /** A row from its coefficients by column. */
        public Row(String name, Map<Integer, BigFraction> coefficients, Sense sense, BigFraction right) {
            this(name, LinearForm.of(coefficients), sense, right);
        }

        /** The left side at a point. */
        public BigFraction activity(List<BigFraction> point) {
            return form.dot(point);
        }
    }

    /** Which way a row holds. */
    public enum Sense {
        AT_LEAST,
        AT_MOST,
        EQUAL
    }

    /** The same rows under other costs, one for each column. */
    public LinearModel withCosts(List<BigFraction> costs) {
        var priced = new ArrayList<Column>();
        for (int j = 0; j < columns.size(); j++) {
            priced.add(new Column(columns.get(j).name(), costs.get(j)));
        }
        return new LinearModel(priced, rows);
    }

    /** The same rows with a form as the objective. */
    public LinearModel minimising(LinearForm form) {
        return withCosts(form.dense(columns.size()));
    }

    /** The same columns with one row more, which comes last. */
    public LinearModel with(Row row) {
        var more = new ArrayList<>(rows);
        more.add(row);
        return new LinearModel(columns, more);
    }

    /** The objective. */
    public LinearForm costs() {
        return LinearForm.over(columns.size(), j -> columns.get(j).cost());
    }

    /** The objective at a point. */
    public BigFraction costAt(List<BigFraction> point) {
        var total = BigFraction.ZERO;
        for (int j = 0; j < columns.size(); j++) {
            if (point.get(j).signum() != 0) {
                total = total.add(columns.get(j).cost().multiply(point.get(j)));
            }
        }
        return total;
    }
}
