package panade.cli.setting;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.assemble.setting.SetResults;
import panade.document.Documents;
import panade.document.setting.Tried;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.trial.Formula;
import panade.nudge.Start;
import panade.plan.Planner;
import panade.result.setting.SetResult;

/**
 * A formula that is looked at with numbers tried.
 *
 * @param file where it is written
 * @param brief in place of the one that it names; null to take that
 * @param overrides with which it was read
 */
public record TriedFormula(Path file, @Nullable Path brief, Overrides overrides) {
    /** What the numbers move of the formula and of its brief; null where none is tried. */
    public @Nullable SetResult moved(Planner planner, Formula now) {
        if (overrides.settings().isEmpty()
                || !(Documents.readTried(Path.of(now.brief().file()), overrides)
                        instanceof Reading.Accepted<Tried> tried)
                || !(Documents.readFormula(file, brief, overrides.trying(List.of()))
                        instanceof Reading.Accepted<Formula> written)) {
            return null;
        }
        var was = written.value();
        var both = new Tried(was.brief(), now.brief(), tried.value().changes());
        return SetResults.of(planner, both, start(was), start(now));
    }

    private static Start start(Formula formula) {
        return new Start(formula.brief(), formula.shares(), formula.suppliers());
    }
}
