package panade.page;

import java.util.List;
import panade.page.Content.Proof;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;

/** Words how an answer was proved, for whoever is not a mathematician and trusts nothing that cannot be checked. */
final class Proofs {
    private Proofs() {}

    static Proof of(Blended blended) {
        var model = blended.proof().model();
        var cost = blended.blend().costPerKg();
        return new Proof(
                List.of(
                        "Feasible, exactly: the blend was put into all "
                                + model.rows().size()
                                + " conditions of the brief in whole fractions, with no rounding and no tolerance.",
                        "Cheapest, exactly: the prices of the bounds above add up to the cost of the blend, so any blend"
                                + " that keeps them costs at least as much. The gap is 0.",
                        blended.proof().engine()
                                + " pointed to the blend; its numbers are not used. Every figure here was worked out"
                                + " again in fractions and rounded once, when it was printed."),
                cost.getNumerator() + " / " + cost.getDenominator());
    }

    static Proof of(Conflicted conflicted) {
        return new Proof(
                List.of(
                        "Impossible, exactly: worked out from the bounds and rules of the brief in whole fractions, with"
                                + " no rounding and no tolerance. Found by "
                                + conflicted.proof().engine() + ".",
                        "Each change in the table was tried by solving with it, so what it says can be typed into the"
                                + " brief and works."),
                null);
    }
}
