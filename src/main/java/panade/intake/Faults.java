package panade.intake;

import java.util.ArrayList;
import java.util.List;
import panade.document.Problem;
import panade.domain.Origin;

/** Collects what is wrong with a table, so that all of it is told at once. */
final class Faults {
    private final List<Problem> found = new ArrayList<>();

    void add(Origin origin, String what, String... advice) {
        found.add(new Problem(origin, what, List.of(advice)));
    }

    void add(Problem problem) {
        found.add(problem);
    }

    boolean none() {
        return found.isEmpty();
    }

    List<Problem> all() {
        return found.stream().distinct().toList();
    }
}
