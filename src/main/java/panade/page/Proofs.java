package panade.page;

import java.util.List;
import panade.page.Content.Proof;
import panade.result.BlendResult;
import panade.result.NoBlendResult;

/** Words how an answer was proved, for whoever is not a mathematician and trusts nothing that cannot be checked. */
public final class Proofs {
    private Proofs() {}

    /** How a least cost was proved. */
    public static Proof of(BlendResult result) {
        var certificate = result.certificate();
        var cost = result.cost().perKg();
        return new Proof(
                List.of(
                        "Feasible, exactly: the blend was put into all "
                                + certificate.rows()
                                + " conditions of the brief in whole fractions, with no rounding and no tolerance.",
                        "Cheapest, exactly: the prices of the bounds above add up to the cost of the blend, so any blend"
                                + " that keeps them costs at least as much. The gap is 0.",
                        certificate.engine()
                                + " pointed to the blend; its numbers are not used. Every figure here was worked out"
                                + " again in fractions and rounded once, when it was printed."),
                cost.getNumerator() + " / " + cost.getDenominator());
    }

    /** How it was proved that there is no blend. */
    public static Proof of(NoBlendResult result) {
        return new Proof(
                List.of(
                        "Impossible, exactly: worked out from the bounds and rules of the brief in whole fractions, with"
                                + " no rounding and no tolerance. Found by "
                                + result.certificate().engine() + ".",
                        "Each change in the table was tried by solving with it, so what it says can be typed into the"
                                + " brief and works."),
                null);
    }
}
