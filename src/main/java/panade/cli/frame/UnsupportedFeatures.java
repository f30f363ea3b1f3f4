package panade.cli.frame;

import java.util.List;
import java.util.stream.Stream;
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

    /** Whether a bound is to be sure, as a problem for a command that takes contents as stated. */
    public static List<Problem> sure(Brief brief) {
        return brief.bounds().stream()
                .filter(bound -> bound.sure() != null)
                .map(bound -> new Problem(
                        bound.origin(),
                        "this command cannot keep \"" + bound.name() + "\" sure",
                        List.of("Expected a brief without it; \"blend\", \"study\" and \"trace --sure\" know it.")))
                .toList();
    }

    /** Everything that a command does not know which follows only a raw cost and stated contents. */
    public static List<Problem> of(Brief brief) {
        return Stream.concat(perCooked(brief).stream(), sure(brief).stream()).toList();
    }
}
