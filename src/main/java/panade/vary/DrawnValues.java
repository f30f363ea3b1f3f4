package panade.vary;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.domain.pantry.IngredientSet;
import panade.domain.pantry.Property;
import panade.quantity.Dimension;
import panade.scenario.NormalDraws;

/**
 * What ingredients hold, drawn from normal distributions: each value that states a spread on its own, to a thousandth
 * of the spread, cut at nothing and at the whole of the ingredient.
 */
final class DrawnValues {
    private final IngredientSet set;
    private final List<Value> values;
    private final NormalDraws draws;

    private DrawnValues(IngredientSet set, List<Value> values, long seed) {
        this.set = set;
        this.values = values;
        this.draws = new NormalDraws(seed);
    }

    /**
     * A value that varies; all numbers in its property's unit.
     *
     * @param most the whole of the ingredient; null for what is not a part of its weight
     */
    private record Value(
            String ingredient,
            String property,
            BigFraction mean,
            BigFraction spread,
            @Nullable BigFraction most) {
        BigFraction off(int thousandths) {
            var drawn = mean.add(spread.multiply(BigFraction.of(thousandths, NormalDraws.PARTS)));
            if (drawn.signum() < 0 && mean.signum() >= 0) {
                return BigFraction.ZERO;
            }
            return most != null && drawn.compareTo(most) > 0 ? most : drawn;
        }
    }

    /**
     * The values that state a spread, of what a brief may use; where the number itself is unknown, nothing is drawn.
     */
    static DrawnValues of(Brief brief, long seed) {
        return of(brief, brief.candidates(), seed);
    }

    /** The same of some ingredients, whether they may be used or not. */
    static DrawnValues of(Brief brief, Set<String> ids, long seed) {
        var values = new ArrayList<Value>();
        for (var spread : brief.set().spreads(ids)) {
            var most = most(brief.set().property(spread.property()));
            brief.composition()
                    .stated(spread.ingredient(), spread.property())
                    .ifPresent(mean ->
                            values.add(new Value(spread.ingredient(), spread.property(), mean, spread.width(), most)));
        }
        return new DrawnValues(brief.set(), List.copyOf(values), seed);
    }

    private static @Nullable BigFraction most(Property property) {
        boolean part = property.component() && property.unit().dimension() == Dimension.SHARE;
        return part ? property.unit().fromBase(BigFraction.ONE) : null;
    }

    /** How many values vary. */
    int count() {
        return values.size();
    }

    /** The pantry of one draw. */
    IngredientSet set(long draw) {
        var off = draws.thousandths(draw, values.size());
        var drawn = new HashMap<String, Map<String, BigFraction>>();
        for (int i = 0; i < off.length; i++) {
            var value = values.get(i);
            drawn.computeIfAbsent(value.ingredient(), id -> new HashMap<>()).put(value.property(), value.off(off[i]));
        }
        return set.holding(drawn);
    }
}
