package panade.plan;

import panade.certify.Verdict.Optimum;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Side;
import panade.explain.Explanation;
import panade.explain.Explanation.SideReading;

/**
 * A least-cost blend with its proof, and reasons only for what is asked.
 *
 * @param brief the brief whose linear model was proved
 * @param compiled that model
 * @param proof of the least cost
 */
public record ProvedBlend(Brief brief, CompiledBrief compiled, Blend blend, Optimum proof) {

    /** How one number of a bound of the brief stands. */
    public SideReading number(Bound bound, Side side) {
        return explanation().number(bound, side);
    }

    /** The reasons, of which each part is worked out when it is asked for. */
    public Explanation explanation() {
        return new Explanation(brief, compiled, blend, proof, part -> {});
    }
}
