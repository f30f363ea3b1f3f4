package panade.assemble;

import java.util.List;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.result.StudyResult;
import panade.result.StudyResult.Bound;
import panade.result.StudyResult.Broken;
import panade.result.StudyResult.Certificate;
import panade.result.StudyResult.ComposedCost;
import panade.result.StudyResult.Compositions;
import panade.result.StudyResult.Cost;
import panade.result.StudyResult.Kept;
import panade.result.StudyResult.Level;
import panade.result.StudyResult.Price;
import panade.result.StudyResult.Safest;
import panade.result.StudyResult.Target;
import panade.result.StudyResult.Use;
import panade.vary.CompositionStudy;
import panade.vary.PriceStudy;

/** Makes the result of {@code study}. */
public final class StudyResults {
    private final PriceStudy study;
    private final Brief brief;

    private StudyResults(PriceStudy study) {
        this.study = study;
        this.brief = study.today().brief();
    }

    /**
     * The result of a study.
     *
     * @param compositions the same with what ingredients hold drawn too; null where that was not done
     */
    public static StudyResult of(PriceStudy study, @Nullable CompositionStudy compositions) {
        return new StudyResults(study).result(compositions);
    }

    private StudyResult result(@Nullable CompositionStudy compositions) {
        var today = study.today();
        return new StudyResult(
                study.draws(),
                study.seed(),
                cost(),
                target(study.target()),
                kept(study.kept()),
                new Safest(
                        kept(study.safest()),
                        study.compared(),
                        study.safest().blend().equals(study.kept().blend())),
                study.weights().stream().map(this::price).toList(),
                study.uses().stream().map(this::use).toList(),
                study.touches().stream()
                        .map(each -> new Bound(each.name(), each.path(), each.side(), each.draws()))
                        .toList(),
                new Certificate(study.proof().proved(), study.proof().off()),
                compositions == null ? null : compositions(compositions),
                RemarkLines.of(today.asked().remarks()),
                brief.title(),
                brief.currency(),
                brief.notes(),
                brief.candidates().stream()
                        .anyMatch(id -> !brief.set().ingredient(id).spread().isEmpty()),
                today.choice() != null);
    }

    private Cost cost() {
        return new Cost(
                study.today().blend().costPerKg(),
                study.mean(),
                study.deviation(),
                study.lowest(),
                study.highest(),
                levels(study.levels()));
    }

    /** Levels of a cost. */
    public static List<Level> levels(List<PriceStudy.Level> levels) {
        return levels.stream()
                .map(level -> new Level(level.share(), level.perKg()))
                .toList();
    }

    /** How often what is hoped for is met. */
    public static @Nullable Target target(PriceStudy.@Nullable Target target) {
        return target == null ? null : new Target(target.perKg(), target.draws());
    }

    private Kept kept(PriceStudy.Kept kept) {
        return new Kept(kept.meanPerKg(), kept.worstPerKg(), ShareLines.of(brief, kept.blend()));
    }

    private Price price(PriceStudy.Weight weight) {
        var offer = weight.offer();
        return new Price(offer.ingredient(), offer.supplier(), weight.part(), name(offer.ingredient()));
    }

    private Use use(PriceStudy.Use use) {
        return new Use(
                use.ingredient(),
                use.draws(),
                use.meanShare(),
                name(use.ingredient()),
                study.today().blend().shareOf(use.ingredient()));
    }

    private String name(String ingredient) {
        return brief.set().ingredient(ingredient).name();
    }

    private static Compositions compositions(CompositionStudy study) {
        var costs = study.costs();
        return new Compositions(
                study.draws(),
                study.values(),
                study.draws(),
                study.noBlend(),
                study.keptMeets(),
                target(study.target()),
                study.broken().stream().map(StudyResults::broken).toList(),
                costs == null
                        ? null
                        : new ComposedCost(costs.mean(), costs.lowest(), costs.highest(), levels(costs.levels())));
    }

    /** A bound that is broken in some draws. */
    public static Broken broken(CompositionStudy.Broken bound) {
        return new Broken(
                bound.name(),
                bound.path(),
                bound.side(),
                bound.draws(),
                bound.asks(),
                bound.oneInTwenty(),
                bound.unit().symbol());
    }
}
