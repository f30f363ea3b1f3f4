package panade.assemble;

import panade.cost.OptionalSections;
import panade.domain.Brief;
import panade.plan.Outcome;
import panade.plan.Outcome.Undecided;
import panade.result.BriefFacts;
import panade.result.BriefFacts.Target;
import panade.result.BriefResult;
import panade.result.BriefResult.Status;

/** Makes the result of any outcome. A blend whose explanation cannot be settled is told as undecided. */
public final class BriefResults {
    private BriefResults() {}

    /** The result, with the remarks on the documents. */
    public static BriefResult of(Outcome outcome) {
        return outcome.explained()
                .fold(
                        blended -> BlendResults.of(blended, OptionalSections.NONE),
                        NoBlendResults::of,
                        open -> new BriefResult.Undecided(
                                Status.UNDECIDED,
                                open.reason(),
                                RemarkLines.of(open.brief().remarks())));
    }

    /** The same as a part of a larger result, which tells the remarks itself. */
    public static BriefResult partOf(Outcome outcome) {
        return outcome.fold(
                BlendResults::partOf,
                NoBlendResults::partOf,
                (Undecided open) -> BriefResult.Undecided.because(open.reason()));
    }

    /** What readers tell of a brief. */
    static BriefFacts facts(Brief brief) {
        var target = brief.target();
        return new BriefFacts(
                brief.title(),
                brief.file(),
                brief.offers().stream()
                        .map(offer -> offer.origin().file())
                        .distinct()
                        .toList(),
                brief.currency(),
                brief.batch().text(),
                brief.batch().base(),
                target == null ? null : new Target(target.text(), target.perKg()),
                brief.notes());
    }
}
