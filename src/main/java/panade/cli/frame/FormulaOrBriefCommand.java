package panade.cli.frame;

import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.remark.BriefRemarks;
import picocli.CommandLine.Mixin;

/** A command on one brief that also takes a formula, and then speaks of what is made. */
public abstract class FormulaOrBriefCommand extends BriefCommand {
    @Mixin
    private final FormulaOption formula = new FormulaOption();

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

    /** Refuses options that cannot be meant of a formula. */
    protected void checkFormula() {}

    /** Does the command's work where a brief is given. */
    protected int workOnBrief() {
        return super.work();
    }

    @Override
    protected final int work() {
        if (!formula.isFormula(file())) {
            checkBrief();
            return workOnBrief();
        }
        checkFormula();
        var reading = formula.read(file(), overrides());
        if (reading instanceof Reading.Rejected<Formula> rejected) {
            return refuse(rejected.problems());
        }
        var read = ((Reading.Accepted<Formula>) reading).value();
        var moved = formula.tried(file(), overrides()).moved(planner(), read);
        if (moved != null) {
            tellWith(moved);
        }
        var brief = planner().keepingLabel(BriefRemarks.on(planner(), read.brief()));
        return answer(read.title(), brief, read);
    }

    private int answer(String title, Brief brief, Formula read) {
        var unsupported = unsupported(brief);
        return unsupported.isEmpty()
                ? answer(title, new Start(brief, read.shares(), read.suppliers()))
                : refuse(unsupported);
    }
}
