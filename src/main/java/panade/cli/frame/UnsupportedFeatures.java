package panade.cli.frame;

import java.util.List;
import panade.document.syntax.Problem;
import panade.domain.Brief;
import panade.domain.origin.Origin;

/** Refuses what a command cannot compute, rather than answer something else. */
public final class UnsupportedFeatures {
    private UnsupportedFeatures() {}

    /** Whether cost is counted per cooked weight, as a problem for a command that only follows a raw cost. */
    public static List<Problem> perCooked(Brief brief) {
        return brief.practice().perCooked()
                ? List.of(new Problem(
                        new Origin(brief.file(), 1, 1, "/costBasis"),
                        "this command cannot follow a cost per cooked weight",
                        List.of("Expected \"raw\", or nothing; \"blend\", \"swap\" and \"batch\" know both.")))
                : List.of();
    }
}
