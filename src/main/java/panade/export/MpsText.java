package panade.export;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import panade.model.LinearModel.Sense;

/**
 * Writes the free MPS format as IBM's "Mathematical Programming System/360" (1968) began it and the manuals of GLPK and
 * HiGHS describe it: fields between blanks, one coefficient a line, whole columns between markers.
 */
final class MpsText {
    private final ModelExport model;
    private final StringBuilder text = new StringBuilder();

    private MpsText(ModelExport model) {
        this.model = model;
    }

    static String of(ModelExport model) {
        var writer = new MpsText(model);
        writer.head();
        writer.columns();
        writer.rightSides();
        writer.bounds();
        return writer.line("ENDATA").text.toString();
    }

    private MpsText line(String line) {
        text.append(line).append('\n');
        return this;
    }

    private void head() {
        model.remarks().forEach(remark -> line("* " + remark));
        line("NAME " + ModelNames.spelled(model.title()));
        line("ROWS").line(" N " + ModelNames.OBJECTIVE);
        for (int i = 0; i < model.rowCount(); i++) {
            line(" " + letter(model.rows().get(i).sense()) + " " + row(i));
        }
    }

    private static String letter(Sense sense) {
        return sense == Sense.AT_LEAST ? "G" : sense == Sense.AT_MOST ? "L" : "E";
    }

    private String row(int i) {
        return model.names().rows().get(i);
    }

    private String column(int j) {
        return model.names().columns().get(j);
    }

    private void columns() {
        var entries = entries();
        line("COLUMNS");
        for (int j = 0; j < model.columnCount(); j++) {
            markWhere(j > 0 && model.isWhole(j - 1), model.isWhole(j));
            line(entry(
                    column(j),
                    ModelNames.OBJECTIVE,
                    DecimalRow.cost(model.costs().get(j))));
            entries.get(j).forEach(this::line);
        }
        markWhere(model.isWhole(model.columnCount() - 1), false);
    }

    private void markWhere(boolean before, boolean after) {
        if (before != after) {
            line(" MARKER 'MARKER' " + (after ? "'INTORG'" : "'INTEND'"));
        }
    }

    /** The coefficients column by column, as lines. */
    private List<List<String>> entries() {
        var entries = new ArrayList<List<String>>();
        model.costs().forEach(cost -> entries.add(new ArrayList<>()));
        for (int i = 0; i < model.rowCount(); i++) {
            for (var term : model.rows().get(i).terms()) {
                entries.get(term.column()).add(entry(column(term.column()), row(i), term.coefficient()));
            }
        }
        return entries;
    }

    private static String entry(String column, String row, BigDecimal value) {
        return " " + column + " " + row + " " + value.toPlainString();
    }

    private void rightSides() {
        line("RHS");
        for (int i = 0; i < model.rowCount(); i++) {
            var right = model.rows().get(i).right();
            if (right.signum() != 0) {
                line(entry("RHS", row(i), right));
            }
        }
    }

    /** Said of whole columns because readers differ in what they take for granted; rows keep them below one. */
    private void bounds() {
        if (model.wholeCount() > 0) {
            line("BOUNDS");
        }
        for (int j = 0; j < model.columnCount(); j++) {
            if (model.isWhole(j)) {
                line(" PL BND " + column(j));
            }
        }
    }
}
