package panade.assemble;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import panade.cost.LabelStudy;
import panade.explain.Explanation.Binding;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Relaxation;
import panade.label.Allergens;
import panade.label.Statement;
import panade.plan.Outcome.Blended;
import panade.result.SwapResult;
import panade.result.SwapResult.AllergenChange;
import panade.result.SwapResult.Amount;
import panade.result.SwapResult.Changes;
import panade.result.SwapResult.Failure;
import panade.substitute.Substitution;
import panade.substitute.Substitution.StandIn;

/** Makes the result of {@code swap}. */
public final class SwapResults {
    private final Substitution swap;
    private final Blended before;

    private SwapResults(Substitution swap) {
        this.swap = swap;
        this.before = swap.before();
    }

    /** The result of a substitution. */
    public static SwapResult of(Substitution swap) {
        return new SwapResults(swap).result();
    }

    private SwapResult result() {
        var after = swap.after() instanceof Blended blended ? blended : null;
        return new SwapResult(
                List.copyOf(swap.out()),
                BlendResults.partOf(before),
                BriefResults.partOf(swap.after()),
                swap.standIns().stream().map(this::standIn).toList(),
                after == null ? null : allergens(after),
                after == null ? null : LabelChanges.of(LabelStudy.between(before, after)),
                RemarkLines.of(before.asked().remarks()),
                swap.out().stream().map(this::name).toList(),
                after == null ? null : changes(after));
    }

    private String name(String id) {
        return before.brief().set().ingredient(id).name();
    }

    private SwapResult.StandIn standIn(StandIn standIn) {
        var id = standIn.ingredient();
        var blended = standIn.blended();
        var undecided = standIn.undecided();
        if (blended != null) {
            return works(standIn, blended);
        }
        return undecided == null
                ? new SwapResult.Fails(id, failure(standIn.failure()), name(id))
                : new SwapResult.Open(id, undecided, name(id));
    }

    private SwapResult.Works works(StandIn standIn, Blended blended) {
        var cost = blended.blend().costPerKg();
        return new SwapResult.Works(
                standIn.ingredient(),
                standIn.share(),
                cost,
                cost.subtract(before.blend().costPerKg()),
                allergens(blended),
                Statement.names(blended.brief(), blended.blend()),
                name(standIn.ingredient()));
    }

    private static @Nullable Failure failure(@Nullable Relaxation relaxation) {
        if (relaxation == null) {
            return null;
        }
        var moves = (Change.Moves) relaxation.change();
        var origin = relaxation.origin();
        return new Failure(
                relaxation.path(),
                origin == null ? null : origin.file(),
                relaxation.name(),
                moves.to(),
                moves.from(),
                moves.unit().symbol());
    }

    private AllergenChange allergens(Blended after) {
        var was = stated(before);
        var is = stated(after);
        return new AllergenChange(without(is, was), without(was, is), without(notKnown(after), notKnown(before)));
    }

    private static Set<String> stated(Blended blended) {
        return Allergens.stated(blended.brief(), blended.blend());
    }

    private static Set<String> notKnown(Blended blended) {
        return Allergens.notKnown(blended.brief(), blended.blend());
    }

    private Changes changes(Blended after) {
        return new Changes(
                amounts(after),
                without(binding(after), binding(before)),
                List.copyOf(stated(after)),
                List.copyOf(notKnown(after)),
                Statement.names(after.brief(), after.blend()));
    }

    private List<Amount> amounts(Blended after) {
        var ids = new TreeSet<String>();
        before.blend().lines().forEach(line -> ids.add(line.use().ingredient()));
        after.blend().lines().forEach(line -> ids.add(line.use().ingredient()));
        var batch = before.brief().batch().base();
        var amounts = new ArrayList<Amount>();
        for (var id : ids) {
            var was = before.blend().shareOf(id);
            var is = after.blend().shareOf(id);
            if (!was.equals(is)) {
                amounts.add(new Amount(name(id), was.multiply(batch), is.multiply(batch)));
            }
        }
        return amounts;
    }

    private static Set<String> binding(Blended outcome) {
        var titles = new TreeSet<String>();
        outcome.explanation().bindings().stream().map(Binding::title).forEach(titles::add);
        return titles;
    }

    private static List<String> without(Set<String> names, Set<String> others) {
        return names.stream().filter(name -> !others.contains(name)).sorted().toList();
    }
}
