package panade.explain.conflict;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.CompiledBrief;
import panade.compile.Extent;
import panade.compile.Limit;
import panade.compile.RuleCompiler;
import panade.domain.Brief;
import panade.domain.Rule;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;

/** Models of a brief with some of its demands only. The columns of the brief's own model always come first. */
final class DemandModels {
    private final Brief brief;
    private final CompiledBrief compiled;

    DemandModels(Brief brief, CompiledBrief compiled) {
        this.brief = brief;
        this.compiled = compiled;
    }

    /** Every demand: rows in the model's order, then rules in the brief's. */
    List<Demand> all() {
        var demands = new ArrayList<Demand>();
        for (int row = 0; row < compiled.rows().size(); row++) {
            if (!isBatch(row)) {
                demands.add(new Demand.OfRow(row));
            }
        }
        brief.practice().rules().forEach(rule -> demands.add(new Demand.OfRule(rule)));
        return List.copyOf(demands);
    }

    /**
     * Rows that no demand can be without: that shares add up to the batch, a ceiling on the cost, and what follows from
     * a sure bound, which asks for nothing without the bound's own row.
     */
    boolean isBatch(int row) {
        return !(compiled.rows().get(row) instanceof Limit.OfNumber);
    }

    /** The model with those demands. */
    MixedModel with(Collection<Demand> held) {
        var rules = new ArrayList<Rule>();
        var rows = new HashSet<Integer>();
        for (var demand : held) {
            if (demand instanceof Demand.OfRule ofRule) {
                rules.add(ofRule.rule());
            } else {
                rows.add(((Demand.OfRow) demand).row());
            }
        }
        return with(rows, rules);
    }

    /** The model without one row, all other demands kept. */
    MixedModel without(int row) {
        var rows = new HashSet<Integer>();
        for (int i = 0; i < compiled.rows().size(); i++) {
            rows.add(i);
        }
        rows.remove(row);
        return with(rows, brief.practice().rules());
    }

    private MixedModel with(Set<Integer> held, List<Rule> rules) {
        var rows = new ArrayList<Row>();
        var limits = new ArrayList<Limit>();
        for (int i = 0; i < compiled.rows().size(); i++) {
            if (held.contains(i) || isBatch(i)) {
                rows.add(compiled.model().rows().get(i));
                limits.add(compiled.rows().get(i));
            }
        }
        return RuleCompiler.compile(brief.withRules(rules), compiled.withRows(rows, limits), Extent.ANY)
                .model();
    }

    /**
     * The model with all demands in which some rows may give way; what they give way in all, weighted, is the cost.
     *
     * @param weights by row that may give way, what a unit of giving way counts
     */
    MixedModel elastic(Map<Integer, BigFraction> weights) {
        var whole = RuleCompiler.compile(brief, compiled, Extent.ANY).model();
        var columns = new ArrayList<Column>();
        whole.relaxed().columns().forEach(column -> columns.add(new Column(column.name(), BigFraction.ZERO)));
        var rows = new ArrayList<>(whole.relaxed().rows());
        for (int i = 0; i < compiled.rows().size(); i++) {
            var weight = weights.get(i);
            if (weight != null) {
                rows.set(i, giving(rows.get(i), weight, columns));
            }
        }
        return new MixedModel(new LinearModel(columns, rows), whole.whole());
    }

    /** The row with one more column, or two for an equation, that fills what it lacks. */
    private static Row giving(Row row, BigFraction weight, List<Column> columns) {
        var form = row.form();
        if (row.sense() != Sense.AT_MOST) {
            form = form.plus(columns.size(), BigFraction.ONE);
            columns.add(new Column("lacks " + row.name(), weight));
        }
        if (row.sense() != Sense.AT_LEAST) {
            form = form.plus(columns.size(), BigFraction.ONE.negate());
            columns.add(new Column("exceeds " + row.name(), weight));
        }
        return new Row(row.name(), form, row.sense(), row.right());
    }
}
