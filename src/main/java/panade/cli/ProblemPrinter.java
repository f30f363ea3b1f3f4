package panade.cli;

import java.io.PrintWriter;
import java.util.List;
import panade.document.Problem;

/** Prints what is wrong with documents, and how much of it there is. */
final class ProblemPrinter {
    private ProblemPrinter() {}

    static int print(List<Problem> problems, PrintWriter err) {
        problems.forEach(problem -> err.println(problem.text()));
        err.println(
                problems.size() == 1
                        ? "1 problem; nothing was calculated."
                        : problems.size() + " problems; nothing was calculated.");
        return ExitStatus.DOCUMENT;
    }
}
