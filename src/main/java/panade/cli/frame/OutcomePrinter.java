package panade.cli.frame;

import java.io.PrintWriter;
import panade.assemble.BlendResults;
import panade.assemble.BriefResults;
import panade.assemble.NoBlendResults;
import panade.cost.OptionalSections;
import panade.export.ResultJson;
import panade.plan.Outcome;
import panade.render.PlainText;
import panade.render.TextRenderer;
import panade.report.blend.BlendReport;
import panade.report.blend.ConflictReport;

/** Prints an outcome and gives the exit status that goes with it. */
public final class OutcomePrinter {
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean json;

    public OutcomePrinter(PrintWriter out, PrintWriter err, boolean json) {
        this.out = out;
        this.err = err;
        this.json = json;
    }

    public int print(Outcome outcome) {
        if (outcome instanceof Outcome.Blended blended) {
            return print(blended, OptionalSections.NONE, false);
        }
        if (outcome instanceof Outcome.Conflicted conflicted) {
            var result = NoBlendResults.of(conflicted);
            out.print(json ? ResultJson.text(result) : TextRenderer.render(ConflictReport.of(result)));
            return ExitStatus.of(conflicted);
        }
        return undecided((Outcome.Undecided) outcome);
    }

    /**
     * Prints a blend.
     *
     * @param all whether to list every unused ingredient
     */
    public int print(Outcome.Blended blended, OptionalSections asides, boolean all) {
        out.print(
                json
                        ? ResultJson.text(BlendResults.of(blended, asides))
                        : TextRenderer.render(BlendReport.of(BlendResults.withMoves(blended, asides), all)));
        return ExitStatus.DONE;
    }

    /** What is told of a question that is not decided. */
    public static String undecided(String reason) {
        return "Not decided, neither a blend nor that there is none could be proved: " + reason + ".";
    }

    private int undecided(Outcome.Undecided undecided) {
        if (json) {
            out.print(ResultJson.text(BriefResults.of(undecided)));
        }
        err.println(PlainText.message(undecided(undecided.reason())));
        return ExitStatus.of(undecided);
    }
}
