package panade.reach;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.domain.purchase.Costs;
import panade.domain.purchase.Shelf;

/**
 * The money left for ingredients, worked back from the shelf line by line.
 *
 * @param lines what is taken off and what is left after it, in order
 * @param perKg what is left for a kilogram of ingredients
 */
public record ShelfTarget(List<Line> lines, BigFraction perKg) {
    /** What kind of line it is. */
    public enum Kind {
        SHELF_PRICE,
        MARGIN,
        LABOUR,
        PACKAGING,
        OVERHEAD,
        PROCESS_LOSS
    }

    /**
     * A line of the reckoning.
     *
     * @param part the fraction of the price or of the weight taken; null when money is taken
     * @param taken money per kilogram taken off
     * @param left money per kilogram left after it
     */
    public record Line(Kind kind, @Nullable BigFraction part, BigFraction taken, BigFraction left) {}

    /**
     * What is hoped for: the target as it is stated, or else worked back from the shelf; empty where neither is stated.
     */
    public static Optional<BigFraction> hopedPerKg(Brief brief) {
        var stated = brief.target();
        var shelf = brief.practice().shelf();
        if (stated != null) {
            return Optional.of(stated.perKg());
        }
        return shelf == null ? Optional.empty() : Optional.of(of(brief, shelf).perKg());
    }

    /** The reckoning for a brief's batch; costs that the brief does not state count as nothing. */
    public static ShelfTarget of(Brief brief, Shelf shelf) {
        var lines = new ArrayList<Line>();
        var left = shelf.price().perKg();
        lines.add(new Line(Kind.SHELF_PRICE, null, BigFraction.ZERO, left));
        for (var margin : shelf.margins()) {
            var taken = left.multiply(margin);
            left = left.subtract(taken);
            lines.add(new Line(Kind.MARGIN, margin, taken, left));
        }
        var costs = brief.practice().costs();
        if (costs != null) {
            left = afterCosts(brief, costs, left, lines);
        }
        return new ShelfTarget(List.copyOf(lines), left);
    }

    /**
     * The smallest batch, in kilograms, whose labour leaves enough for ingredients of that cost; empty when none does.
     */
    public static Optional<BigFraction> batchFor(Brief brief, Shelf shelf, BigFraction ingredientsPerKg) {
        var costs = brief.practice().costs();
        if (costs == null || costs.labourPerBatch().signum() == 0) {
            return Optional.empty();
        }
        var here = of(brief, shelf).perKg();
        var shared = costs.labourPerBatch().divide(brief.batch().base());
        // what a kilogram made could pay towards the labour of a batch if its ingredients cost that much
        var share = here.add(shared).subtract(ingredientsPerKg);
        return share.signum() > 0 ? Optional.of(costs.labourPerBatch().divide(share)) : Optional.empty();
    }

    private static BigFraction afterCosts(Brief brief, Costs costs, BigFraction allIn, List<Line> lines) {
        var left = allIn;
        left = taken(Kind.LABOUR, costs.labourPerPackedKg(brief.batch().base()), left, lines);
        left = taken(Kind.PACKAGING, costs.packagingPerKg(), left, lines);
        left = taken(Kind.OVERHEAD, costs.overheadPerKg(), left, lines);
        var lost = left.multiply(costs.processLoss());
        lines.add(new Line(Kind.PROCESS_LOSS, costs.processLoss(), lost, left.subtract(lost)));
        return left.subtract(lost);
    }

    private static BigFraction taken(Kind kind, BigFraction money, BigFraction left, List<Line> lines) {
        lines.add(new Line(kind, null, money, left.subtract(money)));
        return left.subtract(money);
    }
}
