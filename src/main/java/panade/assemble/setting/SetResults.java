package panade.assemble.setting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.assemble.MadeResults;
import panade.certify.Decision;
import panade.document.setting.Tried;
import panade.document.setting.Tried.Change;
import panade.domain.Brief;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.explain.Explanation.Binding;
import panade.nudge.Start;
import panade.plan.Planner;
import panade.plan.ProvedBlend;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.result.BriefResult.Status;
import panade.result.setting.SetResult;
import panade.result.setting.SetResult.Amount;
import panade.result.setting.SetResult.Least;
import panade.result.setting.SetResult.Line;
import panade.result.setting.SetResult.Made;
import panade.result.setting.SetResult.Moved;
import panade.result.setting.SetResult.Touched;

/** Makes what a try of numbers moves: the brief as written and as tried are each solved and proved. */
public final class SetResults {
    private final Planner planner;

    private SetResults(Planner planner) {
        this.planner = planner;
    }

    /** A brief under its title, or under the name of a price list. */
    public record Named(String name, Tried tried) {}

    /** Of one brief. */
    public static SetResult of(Planner planner, Tried tried) {
        return of(planner, List.of(new Named(tried.written().title(), tried)));
    }

    /** Of several briefs, or of one under several price lists. */
    public static SetResult of(Planner planner, List<Named> all) {
        var results = new SetResults(planner);
        return new SetResult(
                lines(all.stream().map(Named::tried).toList()),
                all.stream()
                        .map(each -> results.moved(each.name(), each.tried(), null))
                        .toList());
    }

    /**
     * Of a formula and its brief.
     *
     * @param written the formula under the brief as written
     * @param now the same under the brief that is tried
     */
    public static SetResult of(Planner planner, Tried tried, Start written, Start now) {
        var name = tried.written().title();
        return new SetResult(
                lines(List.of(tried)), List.of(new SetResults(planner).moved(name, tried, made(written, now))));
    }

    private static List<Line> lines(List<Tried> all) {
        return all.stream()
                .flatMap(tried -> tried.changes().stream().flatMap(change -> lines(change, tried.written())))
                .distinct()
                .toList();
    }

    private static Stream<Line> lines(Change change, Brief brief) {
        return change instanceof Change.OfBound bound
                ? Stream.of(line(bound))
                : ((Change.OfOffers) change)
                        .offers().stream().map(offer -> line((Change.OfOffers) change, offer, brief));
    }

    private static Line line(Change.OfBound change) {
        var bound = change.bound();
        var from = Stream.of(
                        change.side() == Side.MAX ? null : bound.min(), change.side() == Side.MIN ? null : bound.max())
                .flatMap(Stream::ofNullable)
                .map(Quantity::text)
                .distinct()
                .toList();
        return new Line(
                change.setting(),
                bound.title(),
                SetResult.Kind.valueOf(change.side().name()),
                bound.path(),
                from.isEmpty() ? null : String.join(" to ", from),
                change.number(),
                null,
                null);
    }

    private static Line line(Change.OfOffers change, Offer offer, Brief brief) {
        var there = offer.available();
        var price = change.price();
        return new Line(
                change.setting(),
                brief.set().ingredient(offer.ingredient()).name() + " from " + offer.supplier(),
                price == null ? SetResult.Kind.AVAILABLE : SetResult.Kind.PRICE,
                offer.origin().pointer(),
                price == null && there != null ? there.text() : null,
                price == null ? String.valueOf(change.available()) : price,
                price == null ? null : offer.pricePerKg(),
                change.perKg());
    }

    private Moved moved(String name, Tried tried, @Nullable Made made) {
        var written = planner.proved(tried.written());
        var now = planner.proved(tried.now());
        var was = written.found().orElse(null);
        var is = now.found().orElse(null);
        return was == null || is == null
                ? moved(name, tried.now(), new Costs(least(written), least(now), null), null, made)
                : moved(
                        name,
                        tried.now(),
                        new Costs(least(written), least(now), change(was, is)),
                        changes(was, is),
                        made);
    }

    /** The least cost both ways; the change is null unless there is a blend both ways. */
    private record Costs(Least written, Least now, @Nullable BigFraction change) {}

    /** What else changes where there is a blend both ways. */
    private record Changes(boolean unique, List<Amount> amounts, List<Touched> starts, List<Touched> stops) {}

    private static BigFraction change(ProvedBlend was, ProvedBlend is) {
        return is.blend().costPerKg().subtract(was.blend().costPerKg());
    }

    private static Changes changes(ProvedBlend was, ProvedBlend is) {
        return new Changes(
                was.explanation().unique() && is.explanation().unique(),
                amounts(was, is),
                without(is, was),
                without(was, is));
    }

    private static Moved moved(String name, Brief now, Costs costs, @Nullable Changes changes, @Nullable Made made) {
        var change = costs.change();
        return new Moved(
                name,
                costs.written(),
                costs.now(),
                change,
                change == null ? null : change.multiply(Unit.POUND.factor()),
                changes == null ? null : changes.unique(),
                changes == null ? null : changes.amounts(),
                changes == null ? null : changes.starts(),
                changes == null ? null : changes.stops(),
                made,
                now.currency(),
                now.batch().text(),
                now.practice().perCooked());
    }

    private static Least least(Decision<ProvedBlend> decision) {
        return decision.fold(
                found -> least(found.blend().costPerKg()),
                () -> new Least(Status.INFEASIBLE, null, null, null),
                reason -> new Least(Status.UNDECIDED, null, null, reason));
    }

    private static Least least(BigFraction perKg) {
        return new Least(Status.OPTIMAL, perKg, perKg.multiply(Unit.POUND.factor()), null);
    }

    private static List<Amount> amounts(ProvedBlend was, ProvedBlend is) {
        var ids = new TreeSet<String>();
        Stream.of(was, is)
                .forEach(each ->
                        each.blend().lines().forEach(line -> ids.add(line.use().ingredient())));
        return ids.stream()
                .map(id -> amount(id, was, is))
                .filter(each -> each.change().signum() != 0)
                .sorted(Comparator.comparing((Amount each) -> each.change().abs())
                        .reversed())
                .toList();
    }

    private static Amount amount(String id, ProvedBlend was, ProvedBlend is) {
        var from = was.blend().shareOf(id);
        var to = is.blend().shareOf(id);
        return new Amount(
                id,
                from,
                to,
                to.subtract(from),
                is.brief().set().ingredient(id).name(),
                List.of(
                        from.multiply(was.brief().batch().base()),
                        to.multiply(is.brief().batch().base())));
    }

    /** What one blend touches and the other does not. */
    private static List<Touched> without(ProvedBlend one, ProvedBlend other) {
        var others = new ArrayList<>(other.explanation().bindings());
        return one.explanation().bindings().stream()
                .filter(binding -> others.stream().noneMatch(each -> isSame(each, binding)))
                .map(binding -> new Touched(binding.title(), binding.id().path(), binding.side()))
                .toList();
    }

    /** A bound that is fixed binds on both sides, and goes on binding where it was touched on one. */
    private static boolean isSame(Binding one, Binding other) {
        boolean side = one.side() == other.side() || one.side() == Side.FIXED || other.side() == Side.FIXED;
        return side && one.kind() == other.kind() && one.id().equals(other.id());
    }

    private static Made made(Start written, Start now) {
        var was = MadeResults.brokenBy(written);
        var is = MadeResults.brokenBy(now);
        return new Made(cost(written), cost(now), without(is, was), without(was, is));
    }

    private static @Nullable BigFraction cost(Start start) {
        return start.unsold().isEmpty() ? start.blend().costPerKg() : null;
    }

    private static List<String> without(List<String> names, List<String> others) {
        return names.stream().filter(name -> !others.contains(name)).toList();
    }
}
