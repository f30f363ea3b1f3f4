package panade.cli.frame;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import panade.document.Documents;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.remark.BriefRemarks;
import picocli.CommandLine.Option;

/** A command on one brief that also takes a formula, and then speaks of what is made. */
public abstract class FormulaOrBriefCommand extends BriefCommand {
    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Take the other file as a formula (a document, a table, the sheet Formula of a workbook, a"
                    + " result of --json) under this brief.")
    private @Nullable Path under;

    protected FormulaOrBriefCommand(Console console) {
        super(console);
    }

    /**
     * Does the command's work on what is made.
     *
     * @param title of the formula
     * @param made the formula under its brief with all remarks
     */
    protected abstract int answer(String title, Start made);

    /** Refuses options that cannot be meant of a brief. */
    protected void checkBrief() {}

    @Override
    protected final int work() {
        if (under == null && !Documents.isFormula(file())) {
            checkBrief();
            return super.work();
        }
        var reading = Documents.readFormula(file(), under, overrides());
        if (reading instanceof Reading.Rejected<Formula> rejected) {
            return refuse(rejected.problems());
        }
        var formula = ((Reading.Accepted<Formula>) reading).value();
        var brief = planner().keepingLabel(BriefRemarks.on(planner(), formula.brief()));
        return answer(formula.title(), brief, formula);
    }

    private int answer(String title, Brief brief, Formula formula) {
        var unsupported = unsupported(brief);
        return unsupported.isEmpty()
                ? answer(title, new Start(brief, formula.shares(), formula.suppliers()))
                : refuse(unsupported);
    }
}
