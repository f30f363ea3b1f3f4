package panade.solver.ortools;

import java.math.BigInteger;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearModel;

/**
 * Refuses what native code would answer wrongly or die of: numbers so large or small that binary floating point is
 * hopeless with them, and coefficients of columns that are not there.
 */
final class ModelValidator {
    private static final BigFraction LARGEST = BigFraction.of(BigInteger.TEN.pow(15));
    private static final BigFraction SMALLEST = LARGEST.reciprocal();

    private ModelValidator() {}

    /** Why a model may not go to native code; empty when it may. */
    static Optional<String> violation(LinearModel model) {
        if (model.rows().stream().anyMatch(row -> !allThere(row, model.columns().size()))) {
            return Optional.of("a row names a column that is not in the model");
        }
        return numbers(model).allMatch(ModelValidator::isSound)
                ? Optional.empty()
                : Optional.of("a number is too large or too small for binary floating point");
    }

    private static boolean allThere(LinearModel.Row row, int columns) {
        return row.form().columns().stream().allMatch(j -> 0 <= j && j < columns);
    }

    private static Stream<BigFraction> numbers(LinearModel model) {
        var inRows = model.rows().stream()
                .flatMap(row -> Stream.concat(row.form().values().stream(), Stream.of(row.right())));
        return Stream.concat(model.columns().stream().map(LinearModel.Column::cost), inRows);
    }

    private static boolean isSound(BigFraction value) {
        var size = value.abs();
        return size.signum() == 0 || (size.compareTo(SMALLEST) >= 0 && size.compareTo(LARGEST) <= 0);
    }
}
