package panade.explain;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.model.MixedModel;

/** Answers about briefs with rules; every blend is exact, that there is none may be the search's own word. */
public interface Choosing {
    /** The cost per kilogram of a blend as cheap as the search could find; empty when no blend exists. */
    Optional<BigFraction> cheapestFound(Brief brief);

    /** Whether any blend exists. */
    boolean isPossible(Brief brief);

    /**
     * A point with whole numbers where they are asked for, as cheap as the search could find; empty when none exists.
     */
    Optional<List<BigFraction>> point(MixedModel model);
}
