package panade.certify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.simplex.BasisSystem;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.solver.SolverAnswer;

/**
 * The least by which the rows of a model are missed in all, each counted by its largest coefficient. It is a linear
 * program that always has an optimum, so that a solver has a basis to offer even where the model has no point; where
 * that optimum is above zero, its multipliers add the model's rows up to a contradiction (Farkas).
 */
public final class Violation {
    private Violation() {}

    /** The program: the model's columns cost nothing, and what each row is missed by is a column more. */
    public static LinearModel of(LinearModel model) {
        var columns = new ArrayList<Column>();
        model.columns().forEach(column -> columns.add(new Column(column.name(), BigFraction.ZERO)));
        var rows = new ArrayList<Row>();
        for (var row : model.rows()) {
            var form = row.form();
            if (row.sense() != Sense.AT_MOST) {
                form = form.plus(missed(columns, row));
            }
            if (row.sense() != Sense.AT_LEAST) {
                form = form.minus(missed(columns, row));
            }
            rows.add(new Row(row.name(), form, row.sense(), row.right()));
        }
        return new LinearModel(columns, rows);
    }

    private static LinearForm missed(List<Column> columns, Row row) {
        columns.add(new Column("missed " + row.name(), BigFraction.ONE));
        return LinearForm.of(
                columns.size() - 1,
                row.form().isZero() ? BigFraction.ONE : row.form().largest());
    }

    /**
     * The proof that a model has no point, read off what a solver says of its violation; empty where that proves none.
     *
     * @param answer to {@link #of}
     */
    static Optional<Verdict> refuted(LinearModel model, SolverAnswer answer, String engine) {
        return answer instanceof SolverAnswer.Optimal optimal
                ? BasisSystem.solve(of(model), optimal.basis())
                        .map(BasisSystem.Pair::multipliers)
                        .filter(multipliers -> Certificate.provesImpossible(model, multipliers))
                        .map(multipliers -> new Verdict.Impossible(multipliers, engine))
                : Optional.empty();
    }
}
