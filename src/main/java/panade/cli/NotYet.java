package panade.cli;

import java.util.ArrayList;
import java.util.List;
import panade.document.Problem;
import panade.domain.Brief;
import panade.domain.Origin;

/** Refuses what this version reads but cannot yet compute, rather than answer something else. */
final class NotYet {
    private NotYet() {}

    /** Everything in the brief that would change the answer and is not computed; empty when there is nothing. */
    static List<Problem> in(Brief brief) {
        var problems = new ArrayList<Problem>();
        if (brief.practice().costBasis().equals("cooked")) {
            problems.add(cooked(new Origin(brief.file(), 1, 1, "/costBasis"), "a cost per cooked weight"));
        }
        brief.bounds().stream()
                .filter(bound -> bound.state().equals("cooked"))
                .forEach(bound -> problems.add(cooked(bound.origin(), "a bound on the cooked state")));
        return List.copyOf(problems);
    }

    private static Problem cooked(Origin origin, String what) {
        return new Problem(
                origin, what + " cannot be computed in this version", List.of("Expected \"raw\", or nothing."));
    }
}
