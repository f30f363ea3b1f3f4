package panade.result;

import java.util.List;

/**
 * Documents in which nothing is wrong.
 *
 * @param documents how many were read
 * @param problems how many were found in them: none
 * @param remarks what they say that may not be meant
 */
public record CheckResult(int documents, int problems, List<RemarkLine> remarks) {
    public CheckResult {
        remarks = List.copyOf(remarks);
    }
}
