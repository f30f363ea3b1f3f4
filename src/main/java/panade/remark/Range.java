package panade.remark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Verdict.Optimum;
import panade.compile.CompiledBrief;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.plan.Planner;

/** How far a measure can go over the blends that a brief's linear model allows, each end by an exact linear program. */
record Range(Planner planner, CompiledBrief compiled) {

    /** The lowest and the highest; an end that is not there, or could not be proved, is empty. */
    record Ends(Optional<BigFraction> least, Optional<BigFraction> most) {
        boolean areKnown() {
            return least.isPresent() && most.isPresent();
        }
    }

    /** Of a form, with some rows left out. */
    Ends of(Map<Integer, BigFraction> form, List<Row> without) {
        var rows = compiled.model().rows().stream()
                .filter(row -> !without.contains(row))
                .toList();
        var model = new LinearModel(compiled.model().columns(), rows);
        return new Ends(least(model, form), least(model, negated(form)).map(BigFraction::negate));
    }

    /**
     * Of one form per another: a linear program in amounts for each unit of the other (Charnes and Cooper, Naval
     * Research Logistics Quarterly 9, 1962).
     */
    Ends ofRatio(Map<Integer, BigFraction> form, Map<Integer, BigFraction> per, List<Row> without) {
        int scale = compiled.columns().size();
        var columns = new ArrayList<>(compiled.model().columns());
        columns.add(new Column("scale", BigFraction.ZERO));
        var rows = new ArrayList<Row>();
        for (var row : compiled.model().rows()) {
            if (!without.contains(row)) {
                var scaled = new HashMap<>(row.coefficients());
                scaled.put(scale, row.right().negate());
                rows.add(new Row(row.name(), scaled, row.sense(), BigFraction.ZERO));
            }
        }
        rows.add(new Row("one", per, Sense.EQUAL, BigFraction.ONE));
        var model = new LinearModel(columns, rows);
        return new Ends(least(model, form), least(model, negated(form)).map(BigFraction::negate));
    }

    private Optional<BigFraction> least(LinearModel model, Map<Integer, BigFraction> form) {
        var costs = new ArrayList<BigFraction>();
        for (int j = 0; j < model.columns().size(); j++) {
            costs.add(form.getOrDefault(j, BigFraction.ZERO));
        }
        var priced = model.withCosts(costs);
        return planner.verdict(priced) instanceof Optimum optimum
                ? Optional.of(priced.costAt(optimum.point()))
                : Optional.empty();
    }

    private static Map<Integer, BigFraction> negated(Map<Integer, BigFraction> form) {
        var negated = new HashMap<Integer, BigFraction>();
        form.forEach((column, value) -> negated.put(column, value.negate()));
        return negated;
    }
}
