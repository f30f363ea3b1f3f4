package panade.remark;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.origin.Remark;
import panade.plan.Planner;
import panade.quantity.Dimension;
import panade.quantity.Quantity;

/**
 * Remarks on stages that are as wet as what carries their water can be: the cheapest blend goes there, since water
 * costs next to nothing, and a lot that holds a little less then weeps.
 */
final class WetRemarks {
    private WetRemarks() {}

    static List<Remark> of(Planner planner, Brief brief) {
        var carriers = brief.bounds().stream().filter(WetRemarks::isOfCarriers).toList();
        if (carriers.isEmpty()
                || !brief.practice().rules().isEmpty()
                || brief.practice().perCooked()) {
            return List.of();
        }
        return planner.cheapest(brief)
                .found()
                .map(blend -> of(carriers, blend, brief))
                .orElse(List.of());
    }

    private static List<Remark> of(List<Bound> carriers, Blend blend, Brief brief) {
        var remarks = new ArrayList<Remark>();
        carriers.stream().filter(bound -> isFull(bound, blend, brief)).forEach(bound -> remarks.add(remark(bound)));
        return remarks;
    }

    private static Remark remark(Bound bound) {
        var per = bound.per();
        return Words.on(
                bound,
                "In the cheapest blend all that carries " + bound.of().name() + " here is at its wettest at once (\""
                        + bound.name() + "\" is at its maximum): a lot that holds a little less will weep."
                        + " To keep something in hand lower the number, such as \"max\": 0.9 for nine tenths of what \""
                        + (per == null ? "" : per.name()) + "\" states.");
    }

    /** A ceiling on a mass per a trait in gram per gram: how much of it the trait's carriers can hold. */
    private static boolean isOfCarriers(Bound bound) {
        var per = bound.per();
        return bound.max() != null && per != null && isMass(bound.of()) && isCapacity(per);
    }

    private static boolean isMass(Measure measure) {
        return measure.parts().stream().allMatch(part -> part.properties().isEmpty());
    }

    private static boolean isCapacity(Measure measure) {
        return measure.unit().dimension() == Dimension.SHARE
                && measure.unit().symbol().equals("g/g")
                && measure.parts().stream().noneMatch(part -> part.properties().isEmpty());
    }

    private static boolean isFull(Bound bound, Blend blend, Brief brief) {
        Quantity max = bound.max();
        var per = bound.per();
        if (max == null || per == null) {
            return false;
        }
        var held = amount(bound.of(), blend, brief);
        var most = amount(per, blend, brief).multiply(max.base());
        return held.signum() > 0 && held.compareTo(most) == 0;
    }

    private static BigFraction amount(Measure measure, Blend blend, Brief brief) {
        return blend.lines().stream()
                .map(line -> line.share().multiply(measure.perKg(line.use(), brief.composition())))
                .reduce(BigFraction.ZERO, BigFraction::add);
    }
}
