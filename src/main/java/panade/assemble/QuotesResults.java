package panade.assemble;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import panade.certify.Decision;
import panade.cost.LabelStudy;
import panade.domain.Brief;
import panade.domain.origin.Remark;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.quotes.PriceComparison;
import panade.quotes.PriceComparison.Single;
import panade.result.BriefResult.Status;
import panade.result.LabelChangeResult;
import panade.result.QuotesResult;
import panade.result.QuotesResult.CheapestOnAverage;
import panade.result.QuotesResult.Lacking;
import panade.result.QuotesResult.OneBlend;
import panade.result.QuotesResult.Safest;
import panade.result.QuotesResult.Unknown;

/** Makes the result of {@code quotes}. */
public final class QuotesResults {
    private final Brief brief;
    private final PriceComparison comparison;

    private QuotesResults(Brief brief, PriceComparison comparison) {
        this.brief = brief;
        this.comparison = comparison;
    }

    /**
     * The result.
     *
     * @param brief names the product and its ingredients
     * @param remarks on the brief under any of the lists
     */
    public static QuotesResult of(Brief brief, PriceComparison comparison, List<Remark> remarks) {
        return new QuotesResults(brief, comparison).result(remarks);
    }

    private QuotesResult result(List<Remark> remarks) {
        return new QuotesResult(
                comparison.lists(),
                comparison.best().stream().map(BriefResults::partOf).toList(),
                comparison.best().stream().map(this::label).toList(),
                comparison.costOf().stream()
                        .map(row -> row.stream().map(cost -> cost.orElse(null)).toList())
                        .toList(),
                oneBlend(
                        comparison.regret(),
                        found -> new Safest(found.perKg(), found.costs(), ShareLines.of(brief, found.blend()))),
                oneBlend(
                        comparison.average(),
                        found -> new CheapestOnAverage(
                                found.perKg(), found.costs(), ShareLines.of(brief, found.blend()))),
                BriefResults.partOf(comparison.pooled()),
                RemarkLines.of(remarks),
                brief.title(),
                brief.currency(),
                comparison.best().stream().map(this::lacking).toList());
    }

    /** What switching from the first list's blend does to the label; null where a blend is missing. */
    private @Nullable LabelChangeResult label(Outcome outcome) {
        return comparison.best().get(0) instanceof Blended before && outcome instanceof Blended after
                ? LabelChanges.of(LabelStudy.between(before, after))
                : null;
    }

    private static @Nullable OneBlend oneBlend(Decision<Single> decision, Function<Single, OneBlend> found) {
        return decision.fold(found, () -> null, reason -> new Unknown(Status.UNDECIDED, reason));
    }

    private Lacking lacking(Outcome outcome) {
        var list = outcome.fold(Blended::asked, Outcome.Conflicted::brief, Outcome.Undecided::brief);
        return new Lacking(
                lacking(comparison.pooled(), list), lacking(comparison.best().get(0), list));
    }

    /** Names of what the blend of an outcome takes and a list does not sell. */
    private List<String> lacking(Outcome outcome, Brief list) {
        return outcome instanceof Blended blended
                ? blended.blend().lines().stream()
                        .map(line -> line.use().ingredient())
                        .distinct()
                        .filter(id -> !list.candidates().contains(id))
                        .map(id -> brief.set().ingredient(id).name())
                        .sorted()
                        .toList()
                : List.of();
    }
}
