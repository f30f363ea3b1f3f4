package panade.certify;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;

/** The columns of a model that are nought or one, with the rows that keep them from being more. */
final class Switches {
    private final MixedModel model;
    private final Map<Integer, Integer> ceilings = new HashMap<>();

    /** The switches of a model; every whole column must have a row that says it is at most one. */
    Switches(MixedModel model) {
        this.model = model;
        var rows = model.relaxed().rows();
        for (int i = 0; i < rows.size(); i++) {
            var row = rows.get(i);
            boolean single = row.form().columns().size() == 1 && row.sense() == Sense.AT_MOST;
            if (single && row.right().equals(row.form().values().iterator().next())) {
                ceilings.putIfAbsent(row.form().columns().iterator().next(), i);
            }
        }
        if (!ceilings.keySet().containsAll(model.whole())) {
            throw new IllegalArgumentException("a whole column is no switch");
        }
    }

    MixedModel model() {
        return model;
    }

    /** The row that says a switch is at most one. */
    int ceiling(int column) {
        return Objects.requireNonNull(ceilings.get(column));
    }
}
