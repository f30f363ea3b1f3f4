package panade.document.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.offer.SupplyRemarks;
import panade.document.pantry.SupplyReader;
import panade.document.purchase.SupplierRemarks;
import panade.document.selector.CandidateReader;
import panade.document.selector.Ceilings;
import panade.document.selector.ExclusionReader;
import panade.document.selector.NameResolver;
import panade.document.selector.Names;
import panade.document.setting.Edits;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LabelOrder;
import panade.domain.LimitKind;
import panade.domain.pantry.Composition;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** Reads a merged brief together with its supply into one domain value. */
public final class BriefReader {
    private static final String[] FIELDS = {
        "title", "basedOn", "ingredients", "prices", "currency", "batch", "avoid", "only", "target", "bounds",
        "stages", "rules", "maxIngredients", "cooking", "costBasis", "costs", "shelf", "weighing", "serving", "assume",
        "sameLabel", "trials"
    };

    // Stands in for a batch that was told to be wrong, so that the rest can be checked.
    private static final Quantity SOME_BATCH = Quantity.of(BigFraction.ONE, Unit.of("kg"), "1 kg");

    private final ObjectNode written;
    private ObjectNode root;
    private final boolean wholeChain;
    private final List<String> without;
    private final Edits edits;
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    /**
     * A reader of a brief; a field may be missing unless the whole chain it is based on could be read.
     *
     * @param edits of what the brief refers to; the brief itself is edited already
     */
    public BriefReader(ObjectNode root, boolean wholeChain, List<String> without, Edits edits, Problems problems) {
        this.written = root;
        this.root = root;
        this.wholeChain = wholeChain;
        this.without = without;
        this.edits = edits;
        this.problems = problems;
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
    }

    /** The brief; empty when something was wrong. */
    public Optional<Brief> read(String shownAs) {
        new Fields(root, problems, FIELDS);
        var supply = new SupplyReader(problems, wholeChain, edits).read(written);
        root = supply.set().map(set -> new NameResolver(set).resolved(written)).orElse(written);
        var names = new Names(supply.set(), StageReader.ids(value("stages")), problems);
        var batch = batch();
        var stages = new StageReader(names, batch).read(value("stages"));
        var drafts = drafts(names, batch, stages);
        var allowed = new CandidateReader(names);
        var candidates = allowed.read(root, without, supply.offers());
        tellIfNothingIsLeft(supply, candidates);
        supply.set().filter(set -> supply.complete()).ifPresent(set -> {
            new SupplyRemarks(set, supply.offers(), problems).check(root, allowed.keptOut());
            new SupplierRemarks(supply.offers(), problems).check();
        });
        var target = value("target")
                .flatMap(new Amounts(problems, supply.currency())::price)
                .orElse(null);
        var title = value("title").flatMap(node -> expect.text(node, "a text")).map(TextNode::text);
        var practice = new PracticeReader(names, supply.currency()).read(root);
        var states = new StateReader(names, practice.cookingLoss());
        var bounds = drafts.stream().map(states::settled).toList();
        var assume = assumed(names);
        var brief = supply.set()
                .map(set -> new Brief(
                        title.orElse(shownAs),
                        shownAs,
                        set,
                        new Composition(set, assume),
                        supply.currency(),
                        batch == null ? SOME_BATCH : batch,
                        candidates,
                        usable(supply.offers(), candidates),
                        unusable(supply.offers(), candidates),
                        allBounds(bounds, set, candidates),
                        stages.stages(),
                        target,
                        practice,
                        new ExclusionReader(set, supply.offers(), candidates, allowed.reasons()).read(),
                        List.of(),
                        List.of()));
        brief.filter(found -> supply.complete())
                .ifPresent(found -> checkValues(found, states.withCost(bounds, practice, root)));
        return brief.filter(found -> problems.none())
                .map(this::withLearned)
                .filter(found -> problems.none())
                .map(BriefReader::withStatedLabel);
    }

    /** The brief with bounds on what trials taught, which stand after its own. */
    private Brief withLearned(Brief brief) {
        var learned = new LearnedReader(brief, problems).read(LearnedReader.learned(value("bounds")), value("trials"));
        checkValues(
                brief,
                learned.stream()
                        .map(bound -> new BoundReader.Draft(bound, null))
                        .toList());
        var bounds = new ArrayList<>(brief.bounds());
        int own = (int) bounds.stream()
                .takeWhile(bound -> bound.kind() == LimitKind.BRIEF)
                .count();
        bounds.addAll(own, learned);
        return brief.withBounds(bounds);
    }

    private static Brief withStatedLabel(Brief brief) {
        var label = brief.practice().sameLabel();
        return label != null && label.isSettled() ? LabelOrder.keep(brief, label.names(), label.origin()) : brief;
    }

    private List<BoundReader.Draft> drafts(Names names, @Nullable Quantity batch, StageReader.Stages stages) {
        var drafts = new ArrayList<BoundReader.Draft>();
        var serving =
                value("serving").flatMap(node -> amounts.weight(node, "113 g")).orElse(null);
        value("bounds")
                .map(node -> node instanceof ArrayNode list ? LearnedReader.others(list) : node)
                .ifPresent(node -> drafts.addAll(new BoundReader(names, batch, serving, null).readAll(node)));
        drafts.addAll(stages.bounds());
        return drafts;
    }

    private Optional<Node> value(String name) {
        return root.field(name).map(Field::value);
    }

    private @Nullable Quantity batch() {
        var node = value("batch");
        if (node.isEmpty() && wholeChain) {
            problems.add(
                    root.origin(), "\"batch\" is missing", "Expected the weight made at once, \"batch\": \"20 lb\".");
        }
        return node.flatMap(found -> amounts.weight(found, "10 kg")).orElse(null);
    }

    private Map<String, BigFraction> assumed(Names names) {
        var assume = value("assume").flatMap(node -> expect.object(node, "values to assume, such as {\"LYS\": 0}"));
        var values = new LinkedHashMap<String, BigFraction>();
        assume.ifPresent(object -> object.fields().forEach(field -> {
            if (names.knowsProperty(field.nameOrigin(), field.name())) {
                expect.number(field.value(), "a bare number in the component's own unit, such as 0")
                        .map(NumberNode::value)
                        .ifPresent(number -> values.put(field.name(), number));
            }
        }));
        return values;
    }

    // Where the set or a list is at fault, what is missing may only be a part of that fault.
    private void tellIfNothingIsLeft(SupplyReader.Supply supply, Set<String> candidates) {
        if (supply.complete() && candidates.isEmpty()) {
            value("prices")
                    .ifPresent(node -> problems.add(
                            node.origin(),
                            "There is no offer for anything that may be used",
                            "Expected at least one offer for an ingredient that is allowed and not avoided."));
        }
    }

    private static List<Offer> usable(List<Offer> offers, Set<String> candidates) {
        return offers.stream().filter(offer -> isUsable(offer, candidates)).toList();
    }

    private static List<Offer> unusable(List<Offer> offers, Set<String> candidates) {
        return offers.stream().filter(offer -> !isUsable(offer, candidates)).toList();
    }

    private static boolean isUsable(Offer offer, Set<String> candidates) {
        return candidates.contains(offer.ingredient()) && CandidateReader.isToBeHad(offer);
    }

    private static List<Bound> allBounds(List<BoundReader.Draft> drafts, IngredientSet set, Set<String> candidates) {
        var bounds = new ArrayList<Bound>();
        drafts.forEach(draft -> bounds.add(draft.bound()));
        bounds.addAll(Ceilings.of(set, candidates));
        return List.copyOf(bounds);
    }

    private void checkValues(Brief brief, List<BoundReader.Draft> drafts) {
        var checks = new ValueChecks(brief, problems);
        drafts.forEach(checks::check);
    }
}
