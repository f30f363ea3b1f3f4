package panade.experiment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Verdict;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.design.Polytope;
import panade.design.Shadow;
import panade.domain.Brief;
import panade.domain.trial.Lever;
import panade.domain.trial.TrialSet;
import panade.model.LinearForm;
import panade.model.Unproved;
import panade.plan.Planner;
import panade.quantity.Fractions;

/**
 * What the levers can be: of the blend, all that its bounds allow, rules aside; settings, from the least to the most
 * that was tried.
 */
final class LeverRegion {
    /** With more levers edges and sides are too many to be of use. */
    private static final int MOST_WITH_EDGES = 4;

    private final Planner planner;
    private final Levers levers;
    private final CompiledBrief compiled;
    private final List<LinearForm> forms;
    private final List<List<BigFraction>> settings;

    private LeverRegion(Planner planner, Brief brief, TrialSet set, Levers levers) {
        this.planner = planner;
        this.levers = levers;
        this.compiled = BriefCompiler.compile(brief);
        this.forms = levers.all().stream()
                .map(lever -> lever instanceof Lever.OfBlend of
                        ? compiled.formOf(of.measure(), brief.composition())
                        : LinearForm.ZERO)
                .toList();
        this.settings = levers.all().stream().map(lever -> tried(lever, set)).toList();
    }

    /** Corners, middles of edges and sides, and the middle of all; empty where no blend keeps the bounds. */
    static List<List<BigFraction>> candidates(Planner planner, Brief brief, TrialSet set, Levers levers) {
        var region = new LeverRegion(planner, brief, set, levers);
        var shadow = Shadow.of(levers.all().size(), region::farthest);
        if (shadow.isEmpty()) {
            return List.of();
        }
        return levers.all().size() <= MOST_WITH_EDGES ? shadow.get().candidates() : cornersAndMiddle(shadow.get());
    }

    private static List<List<BigFraction>> cornersAndMiddle(Polytope region) {
        var points = new LinkedHashSet<>(region.vertices());
        points.add(region.centroid());
        return List.copyOf(points);
    }

    /** The least and the most of a setting. */
    private static List<BigFraction> tried(Lever lever, TrialSet set) {
        var values = set.trials().stream()
                .filter(trial -> lever instanceof Lever.OfProcess)
                .flatMap(trial -> lever
                        .value(trial.weighed(), trial.process(), set.brief().composition())
                        .stream())
                .toList();
        return values.isEmpty()
                ? List.of(BigFraction.ZERO, BigFraction.ZERO)
                : List.of(
                        values.stream().reduce(values.get(0), Fractions::min),
                        values.stream().reduce(values.get(0), Fractions::max));
    }

    private Optional<List<BigFraction>> farthest(List<BigFraction> weights) {
        var sum = LinearForm.ZERO;
        for (int i = 0; i < forms.size(); i++) {
            sum = sum.plus(forms.get(i).scaled(weights.get(i)));
        }
        // a side between corners of many digits has weights that no solver in floating point can hold
        var scale = sum.isZero() ? BigFraction.ONE : BigFraction.ONE.divide(sum.largest());
        var verdict = planner.verdict(compiled.model().minimising(sum.scaled(scale.negate())));
        if (verdict instanceof Verdict.Optimum optimum) {
            return Optional.of(point(optimum.point(), weights));
        }
        if (verdict instanceof Verdict.Impossible) {
            return Optional.empty();
        }
        throw new Unproved(Planner.reason(verdict));
    }

    private List<BigFraction> point(List<BigFraction> shares, List<BigFraction> weights) {
        var point = new ArrayList<BigFraction>();
        IntStream.range(0, forms.size())
                .forEach(i -> point.add(
                        levers.all().get(i) instanceof Lever.OfBlend
                                ? forms.get(i).dot(shares)
                                : settings.get(i).get(weights.get(i).signum() > 0 ? 1 : 0)));
        return point;
    }
}
