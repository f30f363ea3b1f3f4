package panade.assemble;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.cost.LabelPrice;
import panade.cost.Ladder;
import panade.cost.OptionalSections;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.domain.pantry.IngredientSet;
import panade.explain.Explanation;
import panade.explain.Room;
import panade.lazy.Lazy;
import panade.plan.Choice;
import panade.plan.NumberSteps;
import panade.plan.Outcome.Blended;
import panade.quantity.Unit;
import panade.result.BlendResult;
import panade.result.BlendResult.Allergens;
import panade.result.BlendResult.Alternative;
import panade.result.BlendResult.Basis;
import panade.result.BlendResult.BlendLine;
import panade.result.BlendResult.Certificate;
import panade.result.BlendResult.Check;
import panade.result.BlendResult.Cost;
import panade.result.BlendResult.IngredientCost;
import panade.result.BlendResult.IngredientRoom;
import panade.result.BlendResult.NearestUnused;
import panade.result.BlendResult.PriceRange;
import panade.result.BlendResult.PropertyRoom;
import panade.result.BlendResult.PropertyValue;
import panade.result.BlendResult.Rung;
import panade.result.BlendResult.ShareChange;
import panade.result.BlendResult.UnusedIngredient;
import panade.result.BoundResult;
import panade.result.BriefResult.Status;
import panade.result.RemarkLine;

/** Makes the result of a least-cost blend. */
public final class BlendResults {
    private static final BigFraction GRAMS = BigFraction.of(1000);

    /** A share that changes by less is not told. */
    private static final BigFraction MIN_SHOWN_CHANGE = BigFraction.of(5, 1000);

    private final Blended blended;
    private final Brief brief;
    private final Blend blend;
    private final Explanation explanation;
    private final OptionalSections sections;

    private BlendResults(Blended blended, OptionalSections sections) {
        this.blended = blended;
        this.brief = blended.brief();
        this.blend = blended.blend();
        this.explanation = blended.explanation();
        this.sections = sections;
    }

    /** The result of {@code blend}, with what was asked for beside it. */
    public static BlendResult of(Blended blended, OptionalSections sections) {
        return new BlendResults(blended, sections).result(remarks(blended), null);
    }

    /** The same for readers that tell what round steps of the bounds do; each is solved. */
    public static BlendResult withMoves(Blended blended, OptionalSections sections) {
        return new BlendResults(blended, sections).result(remarks(blended), blended.steps());
    }

    /** Every bound as the blend meets it. */
    public static List<BoundResult> bounds(Blended blended) {
        return blended.explanation().limits().stream()
                .map(new BoundResults(null)::of)
                .toList();
    }

    /** A blend as a part of a larger result. */
    static BlendResult partOf(Blended blended) {
        return new BlendResults(blended, OptionalSections.NONE).result(null, null);
    }

    private static List<RemarkLine> remarks(Blended blended) {
        return RemarkLines.of(blended.asked().remarks());
    }

    private BlendResult result(@Nullable List<RemarkLine> remarks, @Nullable NumberSteps steps) {
        var ladder = sections.ladder();
        var label = sections.label();
        return new BlendResult(
                Status.OPTIMAL,
                new Lazy<>(explanation::unique),
                cost(),
                blend.lines().stream().map(this::line).toList(),
                new Lazy<>(() -> explanation.limits().stream()
                        .map(new BoundResults(steps)::of)
                        .toList()),
                new Lazy<>(() -> explanation.unused().stream().map(this::unused).toList()),
                explanation.properties().stream().map(BlendResults::property).toList(),
                new Lazy<>(this::prices),
                blended.room().ingredients().stream()
                        .map(each -> new IngredientRoom(each.ingredient(), each.min(), each.max()))
                        .toList(),
                blended.room().properties().stream()
                        .map(each -> new PropertyRoom(
                                each.property(),
                                each.min(),
                                each.max(),
                                each.unit().symbol()))
                        .toList(),
                blended.alternatives().stream().map(this::alternative).toList(),
                certificate(),
                remarks == null ? null : FullCosts.of(brief, blend, sections.breakEven()),
                ladder == null ? null : rungs(ladder),
                label == null ? null : labelPrice(label),
                remarks,
                BriefResults.facts(brief),
                new Lazy<>(this::nearest),
                blended.room().slack(),
                money(),
                allergens(brief, blend));
    }

    private Cost cost() {
        var perKg = blend.costPerKg();
        var target = brief.target();
        return new Cost(
                brief.currency().isEmpty() ? null : brief.currency(),
                perKg,
                perKg.multiply(Unit.POUND.factor()),
                blend.rawCostPerKg().multiply(brief.batch().base()),
                brief.practice().perCooked() ? Basis.COOKED : Basis.RAW,
                perKg.toString().replace(" ", ""),
                blend.rawCostPerKg(),
                blend.weight(),
                target == null ? null : perKg.subtract(target.perKg()));
    }

    private BlendLine line(Blend.Line line) {
        var batch = brief.batch().base();
        var id = line.use().ingredient();
        return new BlendLine(
                id,
                line.use().stage(),
                line.offer().supplier(),
                line.share(),
                line.share().multiply(batch).multiply(GRAMS),
                line.costPerKg().multiply(batch),
                costShare(line.costPerKg()),
                name(id),
                stageTitle(line.use().stage()),
                line.offer().pricePerKg(),
                brief.set().ingredient(id).usable(),
                line.share().multiply(batch),
                explanation.properties().stream()
                        .<@Nullable BigFraction>map(property -> brief.composition()
                                .stated(id, property.property())
                                .orElse(null))
                        .toList());
    }

    private BigFraction costShare(BigFraction costPerKg) {
        var total = blend.rawCostPerKg();
        return total.signum() == 0 ? BigFraction.ZERO : costPerKg.divide(total);
    }

    private String name(String ingredient) {
        return brief.set().ingredient(ingredient).name();
    }

    private String stageTitle(String id) {
        return brief.stages().stream()
                .filter(stage -> stage.id().equals(id))
                .map(Stage::title)
                .findFirst()
                .orElse(id);
    }

    private NearestUnused nearest() {
        var nearest = explanation.nearest();
        return new NearestUnused(nearest.first().stream().map(this::unused).toList(), nearest.others());
    }

    private UnusedIngredient unused(Explanation.Unused unused) {
        var entry = unused.entry();
        return new UnusedIngredient(
                unused.ingredient(),
                entry == null ? null : entry.at(),
                entry == null ? null : entry.share(),
                entry == null ? null : entry.saving(),
                entry != null && entry.worthwhile(),
                unused.pricePerKg(),
                unused.supplier(),
                name(unused.ingredient()));
    }

    private static PropertyValue property(Explanation.PropertyValue property) {
        return new PropertyValue(
                property.property(), property.value(), property.unit().symbol(), property.title());
    }

    private List<PriceRange> prices() {
        var rooms = blended.room().ingredients().stream()
                .collect(Collectors.toMap(Room.IngredientRoom::ingredient, Function.identity()));
        return explanation.used().stream()
                .map(used -> price(used, rooms.get(used.ingredient())))
                .toList();
    }

    private PriceRange price(Explanation.Used used, Room.@Nullable IngredientRoom room) {
        return new PriceRange(
                used.ingredient(),
                used.supplier(),
                used.pricePerKg(),
                used.from(),
                used.to(),
                name(used.ingredient()),
                blend.shareOf(used.ingredient()),
                room == null ? null : room.min(),
                room == null ? null : room.max());
    }

    private Alternative alternative(Blend other) {
        var changes = blended.room().ingredients().stream()
                .map(Room.IngredientRoom::ingredient)
                .sorted()
                .map(id -> new ShareChange(name(id), other.shareOf(id).subtract(blend.shareOf(id))))
                .filter(each -> each.change().abs().compareTo(MIN_SHOWN_CHANGE) >= 0)
                .toList();
        return new Alternative(other.costPerKg(), ShareLines.of(brief, other), changes);
    }

    private Certificate certificate() {
        var proof = blended.proof().proof();
        var choice = blended.choice();
        return new Certificate(
                proof.isFeasible() ? Check.EXACT : Check.FAILED,
                proof.isBounded() ? Check.EXACT : Check.FAILED,
                gap(),
                proof.engine(),
                choice == null ? null : choice(choice),
                blended.least(),
                blended.proof().model().rows().size(),
                proof.isComplete());
    }

    /** By what part of itself the cost may be above the least. */
    private BigFraction gap() {
        var choice = blended.choice();
        var least = blended.least();
        if (choice != null) {
            return choice.gap(blend.costPerKg());
        }
        return least == null || least.signum() == 0
                ? blended.proof().proof().gap()
                : blend.costPerKg().subtract(least).divide(least.abs());
    }

    private static BlendResult.Choice choice(Choice choice) {
        return new BlendResult.Choice(
                choice.engine(), choice.closed(), choice.bound(), choice.looked(), choice.claim());
    }

    private List<Rung> rungs(Ladder ladder) {
        var least = blend.costPerKg();
        return ladder.rungs().stream()
                .map(rung -> rung.costPerKg()
                        .fold(
                                cost -> new Rung(rung.names(), cost, null, cost.subtract(least)),
                                () -> new Rung(rung.names(), null, null, null),
                                reason -> new Rung(rung.names(), null, reason, null)))
                .toList();
    }

    private static BlendResult.LabelPrice labelPrice(LabelPrice label) {
        return new BlendResult.LabelPrice(label.freePerKg(), label.extraPerKg());
    }

    private List<IngredientCost> money() {
        Map<String, BigFraction> costs = new LinkedHashMap<>();
        blend.lines().forEach(line -> costs.merge(line.use().ingredient(), line.costPerKg(), BigFraction::add));
        return costs.entrySet().stream()
                .map(each -> new IngredientCost(
                        name(each.getKey()), each.getValue(), costShare(each.getValue()), blend.shareOf(each.getKey())))
                .sorted((a, b) -> b.costPerKg().compareTo(a.costPerKg()))
                .toList();
    }

    /** What the ingredients of a blend carry. */
    static Allergens allergens(Brief brief, Blend blend) {
        return allergens(
                brief.set(), blend.lines().stream().map(line -> line.use().ingredient()));
    }

    /** What ingredients carry. */
    static Allergens allergens(IngredientSet set, Stream<String> ids) {
        var stated = new TreeSet<String>();
        var unknown = new TreeSet<String>();
        ids.map(set::ingredient).forEach(ingredient -> {
            var allergens = ingredient.allergens();
            if (allergens == null) {
                unknown.add(ingredient.name());
            } else {
                stated.addAll(allergens);
            }
        });
        return new Allergens(List.copyOf(stated), List.copyOf(unknown));
    }
}
