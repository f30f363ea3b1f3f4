package panade.plan;

import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Verdict;
import panade.cone.CuttingPlanes;
import panade.domain.Brief;
import panade.explain.conflict.Trials;
import panade.model.Cone;
import panade.model.LinearModel;
import panade.model.MixedModel;
import panade.model.Unproved;
import panade.solver.Deadline;
import panade.solver.MixedSolver;

/** Trials by a planner, all of them before one deadline. */
final class PlannedTrials implements Trials {
    private final Planner planner;
    private final MixedSolver search;
    private final Deadline deadline;
    private final List<Cone> cones;

    PlannedTrials(Planner planner, MixedSolver search, Deadline deadline, List<Cone> cones) {
        this.planner = planner;
        this.search = search;
        this.deadline = deadline;
        this.cones = cones;
    }

    @Override
    public Trials under(List<Cone> others) {
        return new PlannedTrials(planner, search, deadline, others);
    }

    @Override
    public Verdict prove(LinearModel model) {
        return CuttingPlanes.outer(model, cones, planner::verdict);
    }

    @Override
    public Trial solve(Brief brief) {
        return isOver() ? new Trial.Open("the time was over") : planner.trial(brief, deadline);
    }

    @Override
    public Search least(MixedModel model) {
        if (isOver()) {
            return new Search.Open();
        }
        return searched(model, () -> chooser().least(model));
    }

    @Override
    public Search any(MixedModel model) {
        if (isOver()) {
            return new Search.Open();
        }
        return searched(model, () -> chooser().any(model));
    }

    private Search searched(MixedModel model, Supplier<Search> mixed) {
        try {
            return model.whole().isEmpty() ? linear(model.relaxed()) : mixed.get();
        } catch (Unproved undecided) {
            return new Search.Open();
        }
    }

    private Search linear(LinearModel model) {
        var verdict = prove(model);
        if (verdict instanceof Verdict.Optimum optimum) {
            return new Search.Found(optimum.point(), true);
        }
        return verdict instanceof Verdict.Impossible ? new Search.None(true) : new Search.Open();
    }

    private Chooser chooser() {
        return new Chooser(planner::verdict, search, BigFraction.ZERO, deadline.within(Chooser.TIME));
    }

    @Override
    public boolean isOver() {
        return deadline.isOver();
    }
}
