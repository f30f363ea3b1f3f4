package panade.buy;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;

/** A mixed-integer model in the making. */
final class ModelBuilder {
    private final List<Column> columns = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();
    private final Set<Integer> whole = new HashSet<>();

    /** Adds all of a model; gives the place of its first column. */
    int addAll(MixedModel model) {
        int offset = columns.size();
        columns.addAll(model.relaxed().columns());
        model.relaxed().rows().forEach(row -> rows.add(shifted(row, offset)));
        model.whole().forEach(column -> whole.add(column + offset));
        return offset;
    }

    private static Row shifted(Row row, int offset) {
        return new Row(row.name(), row.form().shifted(offset), row.sense(), row.right());
    }

    int column(String name, BigFraction cost) {
        columns.add(new Column(name, cost));
        return columns.size() - 1;
    }

    int wholeColumn(String name, BigFraction cost) {
        int column = column(name, cost);
        whole.add(column);
        return column;
    }

    int newSwitch(String name, BigFraction cost) {
        int column = wholeColumn(name, cost);
        rows.add(MixedModel.limit(column, Sense.AT_MOST, BigInteger.ONE));
        return column;
    }

    void row(Row row) {
        rows.add(row);
    }

    MixedModel model() {
        return new MixedModel(new LinearModel(columns, rows), whole);
    }
}
