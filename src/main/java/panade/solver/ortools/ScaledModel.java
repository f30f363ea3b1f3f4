package panade.solver.ortools;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;

/** A model in binary floating point, each row times a power of ten that brings its largest coefficient near one. */
final class ScaledModel {
    private static final double LARGEST = 1e15;
    private static final double SMALLEST = 1e-15;

    private final List<Double> costs = new ArrayList<>();
    private final List<Map<Integer, Double>> terms = new ArrayList<>();
    private final List<Double> rights = new ArrayList<>();
    private final List<Sense> senses = new ArrayList<>();

    private ScaledModel(LinearModel model) {
        model.columns().forEach(column -> costs.add(column.cost().doubleValue()));
        model.rows().forEach(this::add);
    }

    /** The model; empty when a number in it is beyond what binary floating point should be trusted with. */
    static Optional<ScaledModel> of(LinearModel model) {
        var scaled = new ScaledModel(model);
        return Optional.of(scaled).filter(ScaledModel::isSound);
    }

    private void add(Row row) {
        double largest = row.coefficients().values().stream()
                .mapToDouble(value -> Math.abs(value.doubleValue()))
                .max()
                .orElse(0);
        double factor = largest > 0 ? Math.pow(10, -Math.floor(Math.log10(largest))) : 1;
        var scaled = new HashMap<Integer, Double>();
        row.coefficients().forEach((j, value) -> scaled.put(j, value.doubleValue() * factor));
        terms.add(scaled);
        rights.add(row.right().doubleValue() * factor);
        senses.add(row.sense());
    }

    private boolean isSound() {
        return costs.stream().allMatch(ScaledModel::isSound)
                && rights.stream().allMatch(ScaledModel::isSound)
                && terms.stream().allMatch(row -> row.values().stream().allMatch(ScaledModel::isSound));
    }

    private static boolean isSound(double value) {
        double size = Math.abs(value);
        return size == 0 || (size <= LARGEST && size >= SMALLEST);
    }

    int columnCount() {
        return costs.size();
    }

    int rowCount() {
        return terms.size();
    }

    double cost(int j) {
        return costs.get(j);
    }

    Map<Integer, Double> terms(int i) {
        return terms.get(i);
    }

    double lower(int i) {
        return senses.get(i) == Sense.AT_MOST ? Double.NEGATIVE_INFINITY : rights.get(i);
    }

    double upper(int i) {
        return senses.get(i) == Sense.AT_LEAST ? Double.POSITIVE_INFINITY : rights.get(i);
    }
}
