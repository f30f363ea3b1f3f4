package panade.assemble;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.explain.Explanation;
import panade.nudge.Start;
import panade.plan.Outcome;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.result.formula.MadeNow;
import panade.result.formula.MadeNow.Broken;
import panade.result.formula.MadeNow.Difference;
import panade.result.formula.MadeNow.Named;
import panade.result.formula.MadeResult;
import panade.result.formula.MadeResult.Cheapest;
import panade.result.formula.MadeResult.Cost;
import panade.result.formula.MadeResult.Line;
import panade.result.formula.MadeResult.Property;
import panade.result.formula.MadeResult.Status;

/** Makes the result of a formula as it is made. */
public final class MadeResults {
    private final Brief brief;
    private final Blend blend;
    private final Set<String> unsold;
    private final Audit audit;

    MadeResults(Start start) {
        this(start.brief(), start.blend(), start.unsold());
    }

    private MadeResults(Brief brief, Blend blend, Set<String> unsold) {
        this.brief = brief;
        this.blend = blend;
        this.unsold = unsold;
        this.audit = new Audit(brief, blend);
    }

    /**
     * What any blend costs and holds, measured against a brief as a formula is, with nothing to compare it with.
     *
     * @param unsold ids of what it holds and no list sells
     */
    public static MadeResult measured(Brief brief, Blend blend, Set<String> unsold) {
        return new MadeResults(brief, blend, unsold).result(null);
    }

    /**
     * What is told of a formula alone.
     *
     * @param title what it is called
     * @param cheapest what came of its brief
     */
    public static MadeNow of(String title, Start start, Outcome cheapest) {
        return new MadeResults(start).now(title, cheapest);
    }

    /** Titles of the bounds that a formula breaks, as far as they are known. */
    public static List<String> brokenBy(Start start) {
        var results = new MadeResults(start);
        return start.brief().bounds().stream()
                .filter(results::isKnown)
                .filter(bound -> !results.isMet(bound))
                .map(Bound::title)
                .toList();
    }

    private MadeNow now(String title, Outcome cheapest) {
        var best = cheapest instanceof Outcome.Blended blended ? blended.blend() : null;
        return new MadeNow(
                result(best == null ? null : best.costPerKg()),
                isKnown() ? FullCosts.of(brief, blend, null) : null,
                audit.brokenRules(),
                cheapest.fold(
                        found -> null,
                        none -> "no blend keeps every bound and rule of the brief",
                        open -> open.reason()),
                best == null ? List.of() : differences(best),
                RemarkLines.of(brief.remarks()),
                title,
                brief.batch().text(),
                blend.lines().stream().map(this::named).toList(),
                brief.bounds().stream()
                        .filter(this::isKnown)
                        .flatMap(this::broken)
                        .toList(),
                (int) brief.bounds().stream()
                        .filter(this::isKnown)
                        .filter(this::isMet)
                        .count(),
                brief.bounds().stream()
                        .filter(bound -> !isKnown(bound))
                        .map(Bound::title)
                        .toList());
    }

    /** Whether what is paid in all is known. */
    private boolean isKnown() {
        return unsold.isEmpty();
    }

    private String name(String id) {
        return brief.set().ingredient(id).name();
    }

    private Named named(Blend.Line line) {
        var paid = blend.costPerKg();
        return new Named(
                brief.stages().stream()
                        .filter(stage -> stage.id().equals(line.use().stage()))
                        .map(Stage::title)
                        .findFirst()
                        .orElse(line.use().stage()),
                name(line.use().ingredient()),
                line.offer().supplier(),
                line.share().multiply(brief.batch().base()),
                line.share(),
                !isKnown() || paid.signum() == 0 ? null : line.costPerKg().divide(paid));
    }

    private Stream<Broken> broken(Bound bound) {
        var value = audit.value(bound);
        var min = bound.min();
        var max = bound.max();
        if (isMet(bound) || value.isEmpty()) {
            return Stream.empty();
        }
        boolean low = min != null && audit.slack(bound, min, true).signum() < 0;
        var limit = Optional.ofNullable(low ? min : max).flatMap(number -> audit.number(bound, number));
        return limit.stream()
                .map(number -> new Broken(
                        bound.title(), value.get(), number, low, bound.unit().symbol()));
    }

    private List<Difference> differences(Blend best) {
        return Stream.concat(blend.lines().stream(), best.lines().stream())
                .map(line -> line.use().ingredient())
                .distinct()
                .map(id -> difference(id, best))
                .filter(each -> !Audit.isAsGoodAs(each.grams(), each.cheapestGrams()) || isSomething(each.costPerKg()))
                .sorted(Comparator.comparing(MadeResults::size).reversed())
                .toList();
    }

    private boolean isSomething(@Nullable BigFraction cost) {
        var all = blend.costPerKg();
        return cost == null || !Audit.isAsGoodAs(all.add(cost), all);
    }

    /** How much a difference makes in money; what is not known comes last. */
    private static BigFraction size(Difference each) {
        var cost = each.costPerKg();
        return cost == null ? BigFraction.ZERO : cost.abs();
    }

    private Difference difference(String id, Blend best) {
        var grams = brief.batch().base().multiply(1000);
        return new Difference(
                id,
                blend.shareOf(id).multiply(grams),
                best.shareOf(id).multiply(grams),
                unsold.contains(id) ? null : paid(best, id).subtract(paid(blend, id)),
                name(id));
    }

    private static BigFraction paid(Blend blend, String id) {
        return blend.lines().stream()
                .filter(line -> line.use().ingredient().equals(id))
                .map(Blend.Line::costPerKg)
                .reduce(BigFraction.ZERO, BigFraction::add);
    }

    MadeResult result(@Nullable BigFraction least) {
        var cost = blend.costPerKg();
        return new MadeResult(
                Status.MADE,
                cost(cost),
                blend.lines().stream().map(this::line).toList(),
                brief.bounds().stream().map(this::bound).toList(),
                Explanation.holdings(brief, blend).stream()
                        .map(each -> new Property(
                                each.property(), each.value(), each.unit().symbol(), each.title()))
                        .toList(),
                least == null ? null : new Cheapest(least, isKnown() ? change(least, cost) : null),
                unsold.stream().map(id -> brief.set().ingredient(id).name()).toList());
    }

    private static BigFraction change(BigFraction least, BigFraction cost) {
        return Audit.isAsGoodAs(least, cost) ? BigFraction.ZERO : least.subtract(cost);
    }

    private Cost cost(BigFraction sold) {
        var all = isKnown() ? sold : null;
        var batch = sold.multiply(brief.batch().base());
        return new Cost(
                brief.currency().isEmpty() ? null : brief.currency(),
                all,
                all == null ? null : all.multiply(Unit.POUND.factor()),
                all == null ? null : batch,
                sold,
                batch);
    }

    private Line line(Blend.Line line) {
        var kilograms = line.share().multiply(brief.batch().base());
        return new Line(
                line.use().ingredient(),
                line.use().stage(),
                line.offer().supplier(),
                line.share(),
                kilograms.multiply(1000),
                unsold.contains(line.use().ingredient())
                        ? null
                        : line.costPerKg().multiply(brief.batch().base()));
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

    boolean isKnown(Bound bound) {
        return audit.isKnown(bound);
    }

    boolean isMet(Bound bound) {
        return audit.isKept(bound);
    }
}
