package panade.assemble;

import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.explain.Explanation;
import panade.nudge.Start;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.result.formula.MadeResult;
import panade.result.formula.MadeResult.Cheapest;
import panade.result.formula.MadeResult.Cost;
import panade.result.formula.MadeResult.Line;
import panade.result.formula.MadeResult.Property;
import panade.result.formula.MadeResult.Status;

/** Makes the result of a formula as it is made. */
final class MadeResults {
    private final Start start;
    private final Brief brief;
    private final Blend blend;
    private final Audit audit;

    MadeResults(Start start) {
        this.start = start;
        this.brief = start.brief();
        this.blend = start.blend();
        this.audit = new Audit(brief, blend);
    }

    MadeResult result(@Nullable BigFraction least) {
        var cost = blend.costPerKg();
        return new MadeResult(
                Status.MADE,
                new Cost(
                        brief.currency().isEmpty() ? null : brief.currency(),
                        cost,
                        cost.multiply(Unit.POUND.factor()),
                        cost.multiply(brief.batch().base())),
                blend.lines().stream().map(this::line).toList(),
                brief.bounds().stream().map(this::bound).toList(),
                Explanation.holdings(brief, blend).stream()
                        .map(each -> new Property(
                                each.property(), each.value(), each.unit().symbol()))
                        .toList(),
                least == null ? null : new Cheapest(least, least.subtract(cost)),
                start.unsold().stream()
                        .map(id -> brief.set().ingredient(id).name())
                        .toList());
    }

    private Line line(Blend.Line line) {
        var kilograms = line.share().multiply(brief.batch().base());
        return new Line(
                line.use().ingredient(),
                line.use().stage(),
                line.offer().supplier(),
                line.share(),
                kilograms.multiply(1000),
                line.costPerKg().multiply(brief.batch().base()));
    }

    private MadeResult.Bound bound(Bound bound) {
        boolean known = isKnown(bound);
        return new MadeResult.Bound(
                bound.name(),
                bound.path(),
                bound.unit().symbol(),
                known ? audit.value(bound).orElse(null) : null,
                number(bound, bound.min(), known),
                number(bound, bound.max(), known),
                known ? isMet(bound) : null);
    }

    private @Nullable BigFraction number(Bound bound, @Nullable Quantity limit, boolean known) {
        return limit == null || !known ? null : audit.number(bound, limit).orElse(null);
    }

    /** Whether all that a bound needs of the formula's ingredients is known. */
    boolean isKnown(Bound bound) {
        return blend.lines().stream()
                .allMatch(line -> Stream.of(bound.of(), bound.per() == null ? bound.of() : bound.per())
                        .allMatch((Measure measure) -> measure.isKnown(line.use(), brief.composition())));
    }

    boolean isMet(Bound bound) {
        var min = bound.min();
        var max = bound.max();
        return (min == null || audit.slack(bound, min, true).signum() >= 0)
                && (max == null || audit.slack(bound, max, false).signum() >= 0);
    }
}
