package panade.certify;

import panade.model.LinearModel;
import panade.solver.SolverAnswer;

/** Proves what can be proved of a model; how it comes by its first guess is its own business. */
@FunctionalInterface
public interface Prover {
    /** The prover that asks no solver: the exact simplex from nothing. */
    Prover EXACT = model -> Certifier.certify(model, new SolverAnswer.Undecided("not asked"), Certifier.EXACT_ENGINE);

    /** The verdict on a model. */
    Verdict prove(LinearModel model);
}
