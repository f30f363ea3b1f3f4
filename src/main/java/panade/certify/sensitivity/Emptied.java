package panade.certify.sensitivity;

import java.util.HashSet;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Certifier;
import panade.certify.Verdict.Impossible;
import panade.certify.Verdict.Optimum;
import panade.model.Basis;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.Unproved;
import panade.solver.SolverAnswer;

/** A model in which a form without coefficients below zero has to be zero, solved from the optimum without that. */
public final class Emptied {
    private final LinearModel model;
    private final SolverAnswer start;

    public Emptied(Optimum optimum, LinearForm form) {
        model = optimum.model().with(new Row("none", form, Sense.AT_MOST, BigFraction.ZERO));
        var slacks = new HashSet<>(optimum.basis().rows());
        slacks.add(model.rows().size() - 1);
        start = new SolverAnswer.Optimal(new Basis(optimum.basis().columns(), slacks));
    }

    /** The least cost; empty when nothing is left, which is proved. */
    public Optional<BigFraction> least() {
        return optimum(model).map(found -> found.model().costAt(found.point()));
    }

    /** The least money per weight, found as {@link Sensitivity#leastWithout} says; empty when nothing is left. */
    public Optional<BigFraction> leastPer(LinearForm weight, BigFraction rate) {
        var level = rate;
        while (true) {
            var found = optimum(model.minimising(model.costs().minus(weight.scaled(level.subtract(rate)))));
            if (found.isEmpty()) {
                return Optional.empty();
            }
            var point = found.get().point();
            var gain = found.get().model().costAt(point);
            if (gain.signum() == 0) {
                return Optional.of(level);
            }
            var shared = weight.dot(point);
            if (shared.signum() == 0) {
                throw new Unproved("what is left cooks away to nothing, so that it has no cost per cooked weight");
            }
            level = level.add(gain.divide(shared));
        }
    }

    private Optional<Optimum> optimum(LinearModel asked) {
        var verdict = Certifier.certify(asked, start, Certifier.EXACT_ENGINE);
        if (verdict instanceof Impossible) {
            return Optional.empty();
        }
        if (verdict instanceof Optimum found) {
            return Optional.of(found);
        }
        throw new Unproved("what is left without something was not proved");
    }
}
