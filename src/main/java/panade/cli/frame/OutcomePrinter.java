package panade.cli.frame;

import java.io.PrintWriter;
import panade.assemble.BlendResults;
import panade.assemble.BriefResults;
import panade.assemble.NoBlendResults;
import panade.cli.setting.Answers;
import panade.cost.OptionalSections;
import panade.plan.Outcome;
import panade.render.PlainText;
import panade.report.blend.BlendReport;
import panade.report.blend.ConflictReport;

/** Prints an outcome and gives the exit status that goes with it. */
public final class OutcomePrinter {
    private final Answers answers;
    private final PrintWriter err;

    public OutcomePrinter(Answers answers, PrintWriter err) {
        this.answers = answers;
        this.err = err;
    }

    /** A printer of answers with which no numbers are tried. */
    public OutcomePrinter(PrintWriter out, PrintWriter err, boolean json) {
        this(new Answers(out, err, json, null), err);
    }

    public int print(Outcome outcome) {
        if (outcome instanceof Outcome.Blended blended) {
            return print(blended, OptionalSections.NONE, false);
        }
        if (outcome instanceof Outcome.Conflicted conflicted) {
            var result = NoBlendResults.of(conflicted);
            answers.print(result, () -> ConflictReport.of(result));
            return ExitStatus.of(conflicted);
        }
        return undecided((Outcome.Undecided) outcome);
    }

    /**
     * Prints a blend.
     *
     * @param all whether to tell all that is known, or what is looked at first
     */
    public int print(Outcome.Blended blended, OptionalSections asides, boolean all) {
        answers.print(
                () -> BlendResults.of(blended, asides),
                () -> BlendReport.of(BlendResults.withMoves(blended, asides), all));
        return ExitStatus.DONE;
    }

    /** What is told of a question that is not decided. */
    public static String undecided(String reason) {
        return "Not decided, neither a blend nor that there is none could be proved: " + reason + ".";
    }

    private int undecided(Outcome.Undecided undecided) {
        answers.printForMachines(() -> BriefResults.of(undecided));
        err.println(PlainText.message(undecided(undecided.reason())));
        return ExitStatus.of(undecided);
    }
}
