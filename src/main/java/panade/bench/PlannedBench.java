package panade.bench;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Bench sheets for all blends of a purchase plan.
 *
 * @param sheets in the order in which they are made
 * @param shortages goods of which all sheets together weigh out more than the plan has, since weights are rounded
 */
public record PlannedBench(List<PlannedSheet> sheets, List<Shortage> shortages) {
    /** Where no sheets are asked for. */
    public static final PlannedBench NONE = new PlannedBench(List.of(), List.of());

    public PlannedBench {
        sheets = List.copyOf(sheets);
        shortages = List.copyOf(shortages);
    }

    /**
     * What is missing.
     *
     * @param period when
     * @param name of the ingredient
     * @param kilograms as bought
     */
    public record Shortage(String period, String ingredient, String name, BigFraction kilograms) {}
}
