package panade.compile;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/** A model as lines of text: the objective, then each row by its name. */
final class ModelText {
    private ModelText() {}

    static List<String> of(LinearModel model) {
        var lines = new ArrayList<String>();
        lines.add("min: " + sum(model, model.costs()));
        model.rows().forEach(row -> lines.add(row.name() + ": " + line(model, row)));
        return lines;
    }

    private static String line(LinearModel model, Row row) {
        var sense = row.sense() == Sense.EQUAL ? " = " : row.sense() == Sense.AT_MOST ? " <= " : " >= ";
        return sum(model, row.form()) + sense + text(row.right());
    }

    private static String sum(LinearModel model, LinearForm form) {
        return form.columns().stream()
                .map(j -> (form.at(j).equals(BigFraction.ONE) ? "" : text(form.at(j)) + " ")
                        + model.columns().get(j).name())
                .collect(Collectors.joining(" + "));
    }

    private static String text(BigFraction number) {
        return number.toString().replace(" ", "");
    }
}
