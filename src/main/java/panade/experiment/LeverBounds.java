package panade.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Measure;
import panade.domain.Side;
import panade.domain.origin.Origin;
import panade.domain.trial.Lever;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Bounds on levers, and briefs that are weighed in another quantity. */
final class LeverBounds {
    private LeverBounds() {}

    /** A brief whose blends lie at a point; settings are no matter of the blend. */
    static Brief at(Brief brief, Levers levers, List<BigFraction> point) {
        var bounds = new ArrayList<>(brief.bounds());
        for (int i = 0; i < levers.all().size(); i++) {
            if (levers.all().get(i) instanceof Lever.OfBlend lever) {
                var value = new Quantity(point.get(i), lever.unit(), "as tried");
                bounds.add(bound(lever.name(), i, lever.measure(), value, value));
            }
        }
        return brief.withBounds(bounds);
    }

    /**
     * A bound on a weighted sum of levers.
     *
     * @param weights of each lever in base units; those of settings must be nought
     * @param number its number among the bounds that are added
     */
    static Bound sum(String name, int number, Levers levers, List<BigFraction> weights, Side side, BigFraction limit) {
        var parts = new ArrayList<Measure.Part>();
        for (int i = 0; i < weights.size(); i++) {
            if (levers.all().get(i) instanceof Lever.OfBlend lever
                    && weights.get(i).signum() != 0) {
                var weight = weights.get(i);
                lever.measure().parts().forEach(part -> parts.add(scaled(part, weight)));
            }
        }
        var value = new Quantity(limit, Unit.NUMBER, "as asked");
        var measure = new Measure(name, Unit.NUMBER, parts);
        return bound(name, number, measure, side == Side.MIN ? value : null, side == Side.MIN ? null : value);
    }

    private static Measure.Part scaled(Measure.Part part, BigFraction weight) {
        Map<String, BigFraction> ingredients = part.ingredients().entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey, each -> each.getValue().multiply(weight)));
        return new Measure.Part(part.properties(), ingredients, part.stage());
    }

    private static Bound bound(
            String name, int number, Measure measure, @Nullable Quantity least, @Nullable Quantity most) {
        var origin = new Origin("what is tried", 0, 0, "");
        return new Bound(LimitKind.BRIEF, name, "/" + number, measure, null, least, most, "raw", origin);
    }

    /** The same product in a small batch: limits that are weights shrink with it. */
    static Brief inBatch(Brief brief, Quantity batch) {
        var part = batch.base().divide(brief.batch().base());
        return brief.withBounds(brief.bounds().stream()
                        .map(bound -> bound.withLimits(shrunk(bound.min(), part), shrunk(bound.max(), part)))
                        .toList())
                .withBatch(batch);
    }

    private static @Nullable Quantity shrunk(@Nullable Quantity limit, BigFraction part) {
        return limit == null || !Bound.isAmount(limit)
                ? limit
                : Quantity.of(limit.number().multiply(part), limit.unit(), limit.text());
    }
}
