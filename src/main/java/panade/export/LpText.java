package panade.export;

import java.util.ArrayList;
import java.util.List;
import panade.export.DecimalRow.Term;
import panade.model.LinearModel.Sense;

/** Writes the LP format, a model as one would write it down, in the part of it that GLPK, Cbc and HiGHS share. */
final class LpText {
    private static final int TERMS_ON_A_LINE = 2;

    private final ModelExport model;
    private final StringBuilder text = new StringBuilder();

    private LpText(ModelExport model) {
        this.model = model;
    }

    static String of(ModelExport model) {
        var writer = new LpText(model);
        model.remarks().forEach(remark -> writer.line("\\ " + remark));
        writer.line("Minimize");
        writer.line(" " + ModelNames.OBJECTIVE + ":" + writer.sum(writer.costs()));
        writer.line("Subject To");
        for (int i = 0; i < model.rowCount(); i++) {
            writer.row(i);
        }
        writer.wholeColumns();
        writer.line("End");
        return writer.text.toString();
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    /** The costs that are not zero; one column at no cost where all are, since a sum may not be empty. */
    private List<Term> costs() {
        var terms = new ArrayList<Term>();
        for (int j = 0; j < model.columnCount(); j++) {
            var cost = model.costs().get(j);
            if (cost.signum() != 0) {
                terms.add(new Term(j, DecimalRow.cost(cost)));
            }
        }
        return terms.isEmpty()
                ? List.of(new Term(0, DecimalRow.cost(model.costs().get(0))))
                : terms;
    }

    private void row(int i) {
        var row = model.rows().get(i);
        line(" " + model.names().rows().get(i) + ":" + sum(row.terms()) + " " + sign(row.sense()) + " "
                + row.right().toPlainString());
    }

    private static String sign(Sense sense) {
        return sense == Sense.AT_LEAST ? ">=" : sense == Sense.AT_MOST ? "<=" : "=";
    }

    /** A sum over several lines, for readers whose lines end at 255 characters. */
    private String sum(List<Term> terms) {
        var sum = new StringBuilder();
        for (int i = 0; i < terms.size(); i++) {
            var term = terms.get(i);
            sum.append(i > 0 && i % TERMS_ON_A_LINE == 0 ? "\n  " : " ");
            sum.append(term.coefficient().signum() < 0 ? "- " : "+ ")
                    .append(term.coefficient().abs().toPlainString())
                    .append(' ')
                    .append(model.names().columns().get(term.column()));
        }
        return sum.toString();
    }

    private void wholeColumns() {
        if (model.wholeCount() > 0) {
            line("General");
        }
        for (int j = 0; j < model.columnCount(); j++) {
            if (model.isWhole(j)) {
                line(" " + model.names().columns().get(j));
            }
        }
    }
}
