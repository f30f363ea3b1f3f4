package panade.cli;

import java.util.List;
import java.util.Optional;
import panade.document.Problem;
import panade.domain.Brief;

/** Refuses what this version reads but cannot yet compute, rather than answer something else. */
final class RulesRefusal {
    private RulesRefusal() {}

    static Optional<Problem> of(Brief brief) {
        var origin = brief.practice().rulesOrigin();
        return origin == null
                ? Optional.empty()
                : Optional.of(new Problem(
                        origin,
                        "rules about which ingredients are used cannot be computed in this version",
                        List.of("Expected a brief without \"rules\" and \"maxIngredients\"; take them out to get the"
                                + " cheapest blend without them.")));
    }
}
