package panade.cli.frame;

import java.util.ArrayList;
import java.util.List;
import panade.assemble.setting.SetResults;
import panade.document.Documents;
import panade.document.setting.Tried;
import panade.document.syntax.Problem;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.domain.origin.Origin;
import panade.remark.BriefRemarks;

/**
 * A command that works on one brief with all remarks on it; what is wrong with the brief is told instead of an answer.
 */
public abstract class BriefCommand extends BriefsCommand {
    protected BriefCommand(Console console) {
        super(console);
    }

    /** Does the command's work, and gives the exit status. */
    protected abstract int answer(Brief brief);

    /** Whether the command can follow a cost per cooked weight; a brief that states one is refused elsewhere. */
    protected boolean knowsCooked() {
        return true;
    }

    /** Whether the command can keep a bound sure although contents vary; a brief with one is refused elsewhere. */
    protected boolean knowsSure() {
        return false;
    }

    private Problem notABrief() {
        return new Problem(
                new Origin(file().toString(), 1, 1, ""),
                "This says what is made, and this command asks what could be made",
                List.of("Expected a brief, such as the one that the formula names. \"made\", \"nudge\", \"compare\","
                        + " \"batch\", \"panel\", \"quotes\", \"study\" and \"report\" take formulas."));
    }

    /** What of a brief the command cannot follow. */
    final List<Problem> unsupported(Brief brief) {
        var unsupported = new ArrayList<Problem>();
        unsupported.addAll(knowsCooked() ? List.of() : UnsupportedFeatures.perCooked(brief));
        unsupported.addAll(knowsSure() ? List.of() : UnsupportedFeatures.sure(brief));
        return unsupported;
    }

    @Override
    protected int work() {
        if (!overrides().settings().isEmpty()) {
            return workTrying();
        }
        var reading = Documents.readBrief(file(), overrides());
        return reading instanceof Reading.Accepted<Brief> accepted
                ? work(accepted.value(), () -> {})
                : refuse(wrong(((Reading.Rejected<Brief>) reading).problems()));
    }

    private List<Problem> wrong(List<Problem> problems) {
        return Documents.isFormula(file()) ? List.of(notABrief()) : problems;
    }

    private int workTrying() {
        var reading = Documents.readTried(file(), overrides());
        if (reading instanceof Reading.Rejected<Tried> rejected) {
            return refuse(wrong(rejected.problems()));
        }
        var tried = ((Reading.Accepted<Tried>) reading).value();
        return work(tried.now(), () -> tellWith(SetResults.of(planner(), tried)));
    }

    /**
     * Works on a brief that the command can answer.
     *
     * @param first what is done before
     */
    private int work(Brief read, Runnable first) {
        var brief = BriefRemarks.on(planner(), read);
        var unsupported = unsupported(brief);
        if (!unsupported.isEmpty()) {
            return refuse(unsupported);
        }
        first.run();
        return answer(brief);
    }
}
