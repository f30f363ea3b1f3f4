package panade.document.syntax;

import java.util.List;
import java.util.Optional;
import panade.domain.Brief;
import panade.domain.origin.Remark;

/**
 * What came of looking a document over.
 *
 * @param problems everything wrong, in order
 * @param remarks what is no fault but may not be meant, in order
 * @param brief the brief that was read; empty when the document is of another kind, or at fault
 */
public record Checked(List<Problem> problems, List<Remark> remarks, Optional<Brief> brief) {
    public Checked {
        problems = List.copyOf(problems);
        remarks = List.copyOf(remarks);
    }

    public static Checked of(Problems problems) {
        return new Checked(problems.inOrder(), problems.remarks(), Optional.empty());
    }
}
