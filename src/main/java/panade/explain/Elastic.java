package panade.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Prover;
import panade.certify.Verdict.Optimum;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/** Lets rows give way at a price, and finds the point where they give way least. */
final class Elastic {
    private final LinearModel model;
    private final Prover prover;

    Elastic(LinearModel model, Prover prover) {
        this.prover = prover;
        this.model = model;
    }

    /**
     * The point, over the model's own columns, at which the weighted sum of what the rows give way is least.
     *
     * @param weights by row that may give way, what a unit of giving way counts
     * @return empty when the other rows cannot hold together
     */
    Optional<List<BigFraction>> leastGiving(Map<Integer, BigFraction> weights) {
        var columns = new ArrayList<Column>();
        model.columns().forEach(column -> columns.add(new Column(column.name(), BigFraction.ZERO)));
        var rows = new ArrayList<Row>();
        for (int i = 0; i < model.rows().size(); i++) {
            var weight = weights.get(i);
            var row = model.rows().get(i);
            rows.add(weight == null ? row : giving(row, weight, columns));
        }
        return point(new LinearModel(columns, rows));
    }

    /** The row with one more column, or two for an equation, that fills what it lacks. */
    private static Row giving(Row row, BigFraction weight, List<Column> columns) {
        var coefficients = new HashMap<>(row.coefficients());
        if (row.sense() != Sense.AT_MOST) {
            coefficients.put(columns.size(), BigFraction.ONE);
            columns.add(new Column("lacks " + row.name(), weight));
        }
        if (row.sense() != Sense.AT_LEAST) {
            coefficients.put(columns.size(), BigFraction.ONE.negate());
            columns.add(new Column("exceeds " + row.name(), weight));
        }
        return new Row(row.name(), coefficients, row.sense(), row.right());
    }

    /** The point that makes a form least under all rows but one. */
    Optional<List<BigFraction>> leastWithout(int row, Map<Integer, BigFraction> form) {
        var columns = new ArrayList<Column>();
        for (int j = 0; j < model.columns().size(); j++) {
            columns.add(new Column(model.columns().get(j).name(), form.getOrDefault(j, BigFraction.ZERO)));
        }
        var rows = new ArrayList<>(model.rows());
        rows.remove(row);
        return point(new LinearModel(columns, rows));
    }

    private Optional<List<BigFraction>> point(LinearModel question) {
        var verdict = prover.prove(question);
        return verdict instanceof Optimum optimum
                ? Optional.of(optimum.point().subList(0, model.columns().size()))
                : Optional.empty();
    }
}
