package panade.assemble.formula;

import panade.assemble.RemarkLines;
import panade.assemble.StudyResults;
import panade.domain.Bound;
import panade.nudge.Start;
import panade.result.StudyResult.Cost;
import panade.result.formula.MadeStudyResult;
import panade.result.formula.MadeStudyResult.Contents;
import panade.vary.FormulaStudy;

/** Makes the result of {@code study} for a formula. */
public final class MadeStudyResults {
    private MadeStudyResults() {}

    /** How a formula fares. */
    public static MadeStudyResult of(String title, Start start, FormulaStudy study, long seed) {
        var brief = start.brief();
        var costs = study.costs();
        var unsold = start.unsold().stream()
                .map(id -> brief.set().ingredient(id).name())
                .toList();
        var contents = study.contents();
        return new MadeStudyResult(
                costs.draws(),
                seed,
                unsold.isEmpty()
                        ? new Cost(
                                study.blend().costPerKg(),
                                costs.mean(),
                                costs.deviation(),
                                costs.lowest(),
                                costs.highest(),
                                StudyResults.levels(costs.levels()))
                        : null,
                unsold.isEmpty() ? StudyResults.target(costs.target()) : null,
                contents == null
                        ? null
                        : new Contents(
                                contents.draws(),
                                contents.values(),
                                contents.inside(),
                                contents.broken().stream()
                                        .map(StudyResults::broken)
                                        .toList()),
                study.broken().stream().map(Bound::title).toList(),
                unsold,
                RemarkLines.of(brief.remarks()),
                title,
                brief.currency());
    }
}
