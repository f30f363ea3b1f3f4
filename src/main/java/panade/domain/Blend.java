package panade.domain;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.purchase.Offer;

/**
 * A blend: what goes in, where, from whom.
 *
 * @param lines stage by stage, heaviest first; shares sum to one
 * @param weight kilograms that its cost is counted for, per kilogram of batch: what it weighs cooked where the brief
 *     asks for a cost per cooked weight, else one
 */
public record Blend(List<Line> lines, BigFraction weight) {
    /**
     * One line of a blend.
     *
     * @param use ingredient and stage
     * @param offer whose goods
     * @param share of the batch, kilogram per kilogram
     * @param costPerKg money per kilogram of batch that this line costs
     */
    public record Line(Use use, Offer offer, BigFraction share, BigFraction costPerKg) {}

    /** Money per kilogram, cooked where the brief asks for that. */
    public BigFraction costPerKg() {
        return rawCostPerKg().divide(weight);
    }

    /** Money per kilogram of batch. */
    public BigFraction rawCostPerKg() {
        return lines.stream().map(Line::costPerKg).reduce(BigFraction.ZERO, BigFraction::add);
    }

    /** Share of the batch that an ingredient makes up over all stages. */
    public BigFraction shareOf(String ingredient) {
        return lines.stream()
                .filter(line -> line.use().ingredient().equals(ingredient))
                .map(Line::share)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }
}
