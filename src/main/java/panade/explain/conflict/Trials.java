package panade.explain.conflict;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Prover;
import panade.domain.Brief;
import panade.model.Cone;
import panade.model.MixedModel;

/**
 * Answers about other briefs and other models, within a time for all of them together. Every blend and every point is
 * exact.
 */
public interface Trials extends Prover {
    /** The same of models that have cones over their first columns. */
    Trials under(List<Cone> cones);

    /** What comes of a brief when all of it is solved: bounds, rules, the basis of its cost, and measured again. */
    Trial solve(Brief brief);

    /** A point of least cost with whole numbers where they are asked for. */
    Search least(MixedModel model);

    /** Any point with whole numbers where they are asked for; that there is none may be the search's own word. */
    Search any(MixedModel model);

    /** Whether the time is over, so that every answer from now on is open. */
    boolean isOver();

    /** What comes of a brief. */
    sealed interface Trial {
        /**
         * A blend exists.
         *
         * @param costPerKg of the cheapest found, in the basis of the brief
         * @param least whether it is proved that none is cheaper
         */
        record Works(BigFraction costPerKg, boolean least) implements Trial {}

        /** It is proved that no blend exists. */
        record Fails() implements Trial {}

        /** Neither was found in time. */
        record Open(String reason) implements Trial {}
    }

    /** What comes of a search. */
    sealed interface Search {
        /**
         * A point exists.
         *
         * @param least whether it is proved that none costs less
         */
        record Found(List<BigFraction> point, boolean least) implements Search {}

        /**
         * None exists.
         *
         * @param proved whether that is proved; if not, it is the search's own word
         */
        record None(boolean proved) implements Search {}

        /** Neither was found in time. */
        record Open() implements Search {}
    }
}
