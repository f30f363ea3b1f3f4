package panade.cli.frame;

import java.io.PrintWriter;
import java.util.List;
import panade.document.syntax.Problem;
import panade.render.PlainText;

/** Prints what is wrong with documents, and how much of it there is. */
public final class ProblemPrinter {
    /** Problems shown in full; whoever has more mends one cause of many, not each on its own. */
    private static final int SHOWN = 200;

    private ProblemPrinter() {}

    public static int print(List<Problem> problems, PrintWriter err) {
        problems.stream().limit(SHOWN).forEach(problem -> print(problem, err));
        if (problems.size() > SHOWN) {
            err.println("And " + (problems.size() - SHOWN) + " more, not shown: mend these first.");
        }
        err.println(
                problems.size() == 1
                        ? "1 problem; nothing was calculated."
                        : problems.size() + " problems; nothing was calculated.");
        return ExitStatus.DOCUMENT;
    }

    /** Prints a problem: where and what on the first line, then each piece of advice on its own. */
    public static void print(Problem problem, PrintWriter err) {
        err.println(PlainText.message(problem.origin().place() + ": " + problem.what() + "."));
        problem.advice().forEach(advice -> err.println("    " + PlainText.message(advice)));
    }
}
