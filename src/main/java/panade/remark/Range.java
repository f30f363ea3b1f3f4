package panade.remark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Verdict.Optimum;
import panade.compile.CompiledBrief;
import panade.model.LinearForm;
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
    Ends of(LinearForm form, Set<Integer> without) {
        var model = new LinearModel(compiled.model().columns(), rows(without));
        return new Ends(least(model, form), least(model, form.negated()).map(BigFraction::negate));
    }

    /**
     * Of one form per another: a linear program in amounts for each unit of the other (Charnes and Cooper, Naval
     * Research Logistics Quarterly 9, 1962).
     */
    Ends ofRatio(LinearForm form, LinearForm per, Set<Integer> without) {
        int scale = compiled.model().columns().size();
        var columns = new ArrayList<>(compiled.model().columns());
        columns.add(new Column("scale", BigFraction.ZERO));
        var rows = new ArrayList<Row>();
        for (var row : rows(without)) {
            var scaled = row.form().plus(scale, row.right().negate());
            rows.add(new Row(row.name(), scaled, row.sense(), BigFraction.ZERO));
        }
        rows.add(new Row("one", per, Sense.EQUAL, BigFraction.ONE));
        var model = new LinearModel(columns, rows);
        return new Ends(least(model, form), least(model, form.negated()).map(BigFraction::negate));
    }

    private List<Row> rows(Set<Integer> without) {
        var all = compiled.model().rows();
        return IntStream.range(0, all.size())
                .filter(i -> !without.contains(i))
                .mapToObj(all::get)
                .toList();
    }

    private Optional<BigFraction> least(LinearModel model, LinearForm form) {
        var priced = model.minimising(form);
        return planner.verdict(priced) instanceof Optimum optimum
                ? Optional.of(priced.costAt(optimum.point()))
                : Optional.empty();
    }
}
