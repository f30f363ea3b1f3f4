package panade.substitute;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.domain.Use;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Relaxation;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Outcome.Undecided;
import panade.plan.Planner;
import panade.substitute.Substitution.StandIn;

/** Finds out what replaces an ingredient that is out. */
public final class Substituting {
    private static final BigFraction GOOD_PART = BigFraction.of(1, 20);

    private final Planner planner;
    private final Brief brief;
    private final Blended before;
    private final Set<String> out;

    private Substituting(Planner planner, Blended before, Set<String> out) {
        this.planner = planner;
        this.brief = before.asked();
        this.before = before;
        this.out = out;
    }

    /**
     * The substitution.
     *
     * @param before the best blend of a brief
     * @param out ids of what is out, with their other lots
     */
    public static Substitution of(Planner planner, Blended before, Set<String> out) {
        var study = new Substituting(planner, before, out);
        var rest = before.asked().without(out);
        var after = planner.answer(rest);
        // worth the time to look for a short conflict, because it is the whole answer
        var told = after instanceof Conflicted ? planner.plan(rest) : after;
        return new Substitution(out, before, told, study.standIns());
    }

    private List<StandIn> standIns() {
        var rivals = brief.candidates().stream()
                .filter(id -> !out.contains(id) && couldStandIn(id))
                .sorted()
                .toList();
        var ofAKind = rivals.stream().filter(this::sharesAKind).toList();
        return rivals.stream()
                .map(id -> standIn(id, ofAKind))
                .sorted(Comparator.comparing(Substituting::costOrNull, Comparator.nullsLast(Substituting::compare)))
                .toList();
    }

    private static @Nullable BigFraction costOrNull(StandIn standIn) {
        return standIn.blended() == null ? null : standIn.blended().blend().costPerKg();
    }

    private static int compare(BigFraction a, BigFraction b) {
        return a.compareTo(b);
    }

    /** Not in today's blend, and of a kind with what is out or able to lift a floor that it carried. */
    private boolean couldStandIn(String id) {
        boolean isNew = before.blend().shareOf(id).signum() == 0;
        return isNew && (sharesAKind(id) || carriedFloors().stream().anyMatch(bound -> lifts(id, bound)));
    }

    private boolean sharesAKind(String id) {
        var kinds = brief.set().ingredient(id).kinds();
        return out.stream()
                .anyMatch(missing ->
                        brief.set().ingredient(missing).kinds().stream().anyMatch(kinds::contains));
    }

    /** Floors that bind today and to which what is out adds. */
    private List<Bound> carriedFloors() {
        var binding = before.explanation().bindings().stream()
                .filter(limit -> limit.side() == Side.MIN)
                .toList();
        return brief.bounds().stream()
                .filter(bound -> bound.min() != null && binding.stream().anyMatch(limit -> limit.isOf(bound)))
                .filter(this::isCarried)
                .toList();
    }

    /** Whether what is out brings a good part of what a floor asks for. */
    private boolean isCarried(Bound bound) {
        var brought = BigFraction.ZERO;
        var whole = BigFraction.ZERO;
        for (var line : before.blend().lines()) {
            var part = line.share().multiply(bound.of().perKg(line.use(), brief.composition()));
            whole = whole.add(part);
            brought = out.contains(line.use().ingredient()) ? brought.add(part) : brought;
        }
        return brought.signum() > 0 && brought.compareTo(whole.multiply(GOOD_PART)) >= 0;
    }

    private boolean lifts(String id, Bound bound) {
        return brief.stages().stream()
                .filter(stage -> stage.ingredients().contains(id))
                .anyMatch(stage -> gain(new Use(id, stage.id()), bound).signum() > 0);
    }

    /** What a kilogram adds to a bound over what its floor then asks. */
    private BigFraction gain(Use use, Bound bound) {
        var amount = bound.of().perKg(use, brief.composition());
        var per = bound.per();
        var min = bound.min();
        return per == null || min == null
                ? amount
                : amount.subtract(per.perKg(use, brief.composition()).multiply(min.base()));
    }

    /** Tried with all others of its kind left out. */
    private StandIn standIn(String id, List<String> ofAKind) {
        var without = new LinkedHashSet<>(out);
        without.addAll(ofAKind);
        without.remove(id);
        var outcome = planner.answer(brief.without(without));
        if (outcome instanceof Blended blended) {
            return new StandIn(id, blended, blended.blend().shareOf(id), null, null);
        }
        return outcome instanceof Conflicted conflicted
                ? new StandIn(id, null, BigFraction.ZERO, failure(conflicted), null)
                : new StandIn(id, null, BigFraction.ZERO, null, ((Undecided) outcome).reason());
    }

    /** The number that would have to give: one that what is out carried, if one of those would do. */
    private @Nullable Relaxation failure(Conflicted conflicted) {
        var carried = carriedFloors().stream().map(Bound::id).toList();
        var moves = conflicted.conflict().cures().stream()
                .filter(cure -> cure.change() instanceof Change.Moves)
                .toList();
        return moves.stream()
                .filter(cure -> cure.change() instanceof Change.Moves move
                        && move.side() == Side.MIN
                        && carried.contains(move.bound()))
                .findFirst()
                .orElse(moves.isEmpty() ? null : moves.get(0));
    }
}
