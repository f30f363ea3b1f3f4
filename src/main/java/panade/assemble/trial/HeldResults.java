package panade.assemble.trial;

import panade.assemble.RemarkLines;
import panade.domain.Bound;
import panade.plan.Outcome.Blended;
import panade.result.trial.HeldResult;
import panade.result.trial.HeldResult.HeldBound;
import panade.vary.HeldStudy;

/** Makes the result of drawing what a sure blend's ingredients hold. */
public final class HeldResults {
    private HeldResults() {}

    /** The result. */
    public static HeldResult of(Blended blended, HeldStudy study, long seed) {
        var brief = blended.brief();
        return new HeldResult(
                study.draws(),
                seed,
                study.values(),
                study.all(),
                study.bounds().stream().map(HeldResults::bound).toList(),
                brief.bounds().stream()
                        .filter(Bound::isLearned)
                        .map(Bound::name)
                        .toList(),
                RemarkLines.of(brief.remarks()),
                brief.title());
    }

    private static HeldBound bound(HeldStudy.Held held) {
        var bound = held.bound();
        var sure = bound.sure();
        return new HeldBound(
                bound.name(),
                bound.path(),
                bound.origin().file(),
                sure == null ? null : sure.share().base(),
                held.draws());
    }
}
