package panade.nudge;

import java.util.List;
import java.util.Set;
import panade.certify.Decision;
import panade.plan.Planner;

/**
 * What changing a formula comes to.
 *
 * @param start the formula as the changes see it, with what is kept
 * @param kept ids of what stays as it is
 */
public record Nudge(Start start, Set<String> kept, MovePath path, List<FewChanges.Few> few) {
    /**
     * The answer; impossible where no blend meets the brief with what is kept.
     *
     * @param kept ids of what stays as it is
     * @param changes how many ingredients may change at most
     */
    public static Decision<Nudge> of(Planner planner, Start made, Set<String> kept, int changes) {
        var start = made.keeping(kept);
        return MovePath.of(planner, start).map(path -> {
            var points = path.points();
            var least = points.get(points.size() - 1).costPerKg();
            return new Nudge(start, kept, path, new FewChanges(planner, start).upTo(changes, least));
        });
    }
}
