package panade.compile;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import panade.domain.Bound;
import panade.model.MixedModel;

/**
 * A brief with rules as a mixed-integer model: the columns of the brief without rules come first, then one of nought or
 * one for each option.
 *
 * @param model what to solve
 * @param switches by column, the option that is used when the column is one
 * @param floors what must be there of an option when its column is one
 */
public record CompiledChoice(MixedModel model, Map<Integer, Set<String>> switches, List<Floor> floors) {
    public CompiledChoice {
        switches = Map.copyOf(switches);
        floors = List.copyOf(floors);
    }

    /** A floor on an option, worded as a bound on the batch. */
    public record Floor(int column, Bound bound) {}

    /** Ingredients that a choice leaves out. */
    public Set<String> leftOut(Map<Integer, BigInteger> values) {
        var out = new TreeSet<String>();
        switches.forEach((column, option) -> {
            if (values.getOrDefault(column, BigInteger.ZERO).signum() == 0) {
                out.addAll(option);
            }
        });
        return out;
    }

    /** Floors that hold under a choice. */
    public List<Bound> floors(Map<Integer, BigInteger> values) {
        return floors.stream()
                .filter(floor ->
                        values.getOrDefault(floor.column(), BigInteger.ZERO).signum() > 0)
                .map(Floor::bound)
                .distinct()
                .toList();
    }
}
