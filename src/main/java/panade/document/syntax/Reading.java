package panade.document.syntax;

import java.util.List;

/** What came of reading documents: a value, or every problem found. */
public sealed interface Reading<T> {
    /** Nothing was wrong. */
    record Accepted<T>(T value) implements Reading<T> {}

    /** Something was wrong; the problems are in the order of the files and lines. */
    record Rejected<T>(List<Problem> problems) implements Reading<T> {
        public Rejected {
            problems = List.copyOf(problems);
        }
    }
}
