package panade.intake.table;

import java.util.ArrayList;
import java.util.List;
import panade.document.syntax.Problem;
import panade.domain.origin.Origin;

/** Collects what is wrong with a table, so that all of it is told at once. */
public final class Faults {
    private final List<Problem> found = new ArrayList<>();

    public void add(Origin origin, String what, String... advice) {
        found.add(new Problem(origin, what, List.of(advice)));
    }

    public void add(Problem problem) {
        found.add(problem);
    }

    public boolean none() {
        return found.isEmpty();
    }

    public List<Problem> all() {
        return found.stream().distinct().toList();
    }
}
