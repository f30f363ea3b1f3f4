package panade.explain;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Unit;

/**
 * How far a blend may be varied while it keeps every bound and costs at most a little more than the least.
 *
 * @param slack how much more, as a fraction of the least cost
 * @param ingredients least and most share of each candidate over all stages, by id
 * @param properties least and most of each property that is known of every candidate
 * @param points the blends found at those ends, as points of the model
 */
public record Room(
        BigFraction slack,
        List<IngredientRoom> ingredients,
        List<PropertyRoom> properties,
        List<List<BigFraction>> points) {

    /** No room measured. */
    public static final Room UNMEASURED = new Room(BigFraction.ZERO, List.of(), List.of(), List.of());

    /** Least and most share of an ingredient. */
    public record IngredientRoom(String ingredient, BigFraction min, BigFraction max) {}

    /** Least and most of a property, in its unit. */
    public record PropertyRoom(String property, Unit unit, BigFraction min, BigFraction max) {}
}
