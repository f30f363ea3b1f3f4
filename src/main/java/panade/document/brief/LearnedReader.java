package panade.document.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.brief.LimitReader.Limits;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.document.syntax.References;
import panade.document.trial.TrialsReader;
import panade.domain.Bound;
import panade.domain.BoundId;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.trial.Lever;
import panade.domain.trial.Sure;
import panade.domain.trial.TrialSet;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.trial.FittedResponse;
import panade.trial.Fitting;
import panade.trial.LearnedForm;
import panade.trial.LeverEffect;

/** Reads bounds on what trials taught, and the trials. Blends are kept within what was tried of their levers. */
final class LearnedReader {
    private static final String FIELD = "learned";
    private static final List<String> OF = List.of("batch", "mean");

    private final Brief brief;
    private final Problems problems;
    private final Expect expect;
    private final List<Bound> bounds = new ArrayList<>();
    private final Map<BoundId, Bound> walls = new LinkedHashMap<>();

    /** A reader of bounds of a brief that is read but for them. */
    LearnedReader(Brief brief, Problems problems) {
        this.brief = brief;
        this.problems = problems;
        this.expect = new Expect(problems);
    }

    /** The list without bounds on what trials taught. */
    static ArrayNode others(ArrayNode all) {
        return new ArrayNode(
                all.origin(),
                all.items().stream().filter(item -> !isLearned(item)).toList());
    }

    /** Those bounds. */
    static List<ObjectNode> learned(Optional<Node> all) {
        return all.filter(ArrayNode.class::isInstance).stream()
                .flatMap(list -> ((ArrayNode) list).items().stream())
                .filter(LearnedReader::isLearned)
                .map(ObjectNode.class::cast)
                .toList();
    }

    private static boolean isLearned(Node item) {
        return item instanceof ObjectNode object && object.field(FIELD).isPresent();
    }

    /** The bounds, and after them how far each of their levers was tried. */
    List<Bound> read(List<ObjectNode> written, Optional<Node> trials) {
        if (written.isEmpty()) {
            return List.of();
        }
        if (trials.isEmpty()) {
            written.forEach(each -> problems.add(
                    each.origin(),
                    "No trials are named for what was learned",
                    "Expected \"trials\" in the brief, the path of a document of trials."));
            return List.of();
        }
        var set = trials.flatMap(node -> expect.text(node, "the path of a document of trials"))
                .flatMap(new References(problems)::file)
                .flatMap(file -> JsonDocument.read(file, file.toString(), problems)
                        .flatMap(node -> expect.object(node, "trials, such as {\"responses\": {}, \"trials\": []}"))
                        .flatMap(root -> new TrialsReader(brief, problems).read(root, file.toString())));
        set.ifPresent(found -> written.forEach(each -> read(each, found)));
        bounds.addAll(walls.values());
        return List.copyOf(bounds);
    }

    private void read(ObjectNode object, TrialSet trials) {
        int before = problems.count();
        var fields = new Fields(object, problems, "name", FIELD, "min", "max", "sure", "of");
        var response = object.field(FIELD)
                .map(Field::value)
                .flatMap(node -> expect.text(node, "the name of a response"))
                .flatMap(text -> response(text, trials));
        var share = fields.required("sure", "how sure it is to be, such as \"90 %\"")
                .flatMap(new SurenessReader(problems)::share);
        var of = object.field("of").map(Field::value).flatMap(this::of);
        if (response.isEmpty() || share.isEmpty() || problems.count() != before) {
            return;
        }
        var fitted = response.get();
        var unit = unit(fitted);
        var limits = limits(object, unit);
        if (problems.count() == before) {
            boolean batch = !of.equals(Optional.of("mean"));
            var form = LearnedForm.of(fitted, brief.set().ingredients().keySet(), unit, batch);
            bounds.add(bound(object, fitted, form, limits, share.get()));
            fitted.effects().stream()
                    .filter(effect -> effect.lever() instanceof Lever.OfBlend)
                    .forEach(this::addWall);
            form.settled().forEach(effect -> tellSettled(object, fitted, effect));
            if (!fitted.remarks().isEmpty()) {
                problems.remark(
                        object.origin(),
                        "What the trials do not tell of \"" + fitted.response().name() + "\": "
                                + String.join(" ", fitted.remarks()));
            }
        }
    }

    private Optional<FittedResponse> response(TextNode name, TrialSet trials) {
        var fitted = Fitting.of(trials, BigFraction.of(9, 10)).stream()
                .filter(each -> each.response().name().equals(name.text()))
                .findFirst();
        if (fitted.isEmpty()) {
            problems.unknown(
                    name.origin(),
                    "The trials have no response \"" + name.text() + "\"",
                    name.text(),
                    trials.responses().stream().map(each -> each.name()).toList(),
                    "Expected one that they measured.");
            return fitted;
        }
        var objection = fitted.flatMap(LearnedForm::objection);
        objection.ifPresent(why -> problems.add(
                name.origin(),
                "\"" + name.text() + "\" " + why,
                "Expected a response that trials tell as straight lines over shares and contents; \"panade fit "
                        + trials.file() + "\" says what they tell."));
        return objection.isPresent() ? Optional.empty() : fitted;
    }

    private Optional<String> of(Node node) {
        var text = expect.text(node, "\"batch\" or \"mean\"");
        text.filter(found -> !OF.contains(found.text()))
                .ifPresent(found -> problems.unknown(
                        found.origin(),
                        "A bound cannot be on the \"" + found.text() + "\"",
                        found.text(),
                        OF,
                        "Expected \"batch\", the next one, or \"mean\", that of many."));
        return text.map(TextNode::text);
    }

    /** The response's own unit, whatever it is elsewhere: grams that a strip carries are no weight in the batch. */
    private static Unit unit(FittedResponse response) {
        var symbol = response.response().unit();
        return symbol.isEmpty() ? Unit.NUMBER : Unit.ofItsOwn(symbol);
    }

    private Limits limits(ObjectNode object, Unit unit) {
        if (object.field("min").isEmpty() && object.field("max").isEmpty()) {
            problems.add(object.origin(), "Neither \"min\" nor \"max\" is given", "Expected at least one of them.");
        }
        var min = object.field("min").flatMap(field -> limit(field.value(), unit));
        var max = object.field("max").flatMap(field -> limit(field.value(), unit));
        if (min.isPresent()
                && max.isPresent()
                && min.get().base().compareTo(max.get().base()) >= 0) {
            problems.add(
                    object.origin(),
                    "What is to be sure cannot lie between \"" + min.get().text() + "\" and \""
                            + max.get().text() + "\"",
                    "Expected \"min\" below \"max\".");
        }
        return new Limits(min.orElse(null), max.orElse(null));
    }

    private Optional<Quantity> limit(Node node, Unit unit) {
        if (node instanceof NumberNode number && unit.symbol().isEmpty()) {
            return Optional.of(new Quantity(number.value(), unit, Expect.spelling(node)));
        }
        var quantity = node instanceof TextNode text
                ? Quantity.split(text.text())
                        .filter(split -> split.symbol().equals(unit.symbol())
                                && !unit.symbol().isEmpty())
                        .flatMap(split -> Decimal.parse(split.number()))
                        .map(number -> new Quantity(number, unit, text.text()))
                : Optional.<Quantity>empty();
        if (quantity.isEmpty()) {
            problems.add(
                    node.origin(),
                    Expect.spelling(node) + " is not measured like that response",
                    unit.symbol().isEmpty()
                            ? "Expected a bare number, such as 6."
                            : "Expected a number with its unit, such as \"10 " + unit.symbol() + "\".");
        }
        return quantity;
    }

    private Bound bound(ObjectNode object, FittedResponse fitted, LearnedForm form, Limits limits, Quantity share) {
        var name = object.field("name")
                .flatMap(field -> expect.text(field.value(), "a text to call the bound by"))
                .map(TextNode::text)
                .orElse(fitted.response().name());
        return new Bound(
                        LimitKind.BRIEF,
                        name,
                        object.origin().pointer(),
                        form.mean(),
                        null,
                        limits.min(),
                        limits.max(),
                        "raw",
                        object.origin())
                .withSureness(Sure.of(share, limits.min() != null && limits.max() != null, form.estimated()));
    }

    /** One for each lever, within what was tried of it for every response that is bounded. */
    private void addWall(LeverEffect effect) {
        var lever = (Lever.OfBlend) effect.lever();
        var wall = new Bound(
                LimitKind.TRIED,
                lever.name() + ", as far as tried",
                lever.origin().pointer(),
                lever.measure(),
                null,
                told(effect.from(), lever.unit()),
                told(effect.to(), lever.unit()),
                "raw",
                lever.origin());
        walls.merge(wall.id(), wall, LearnedReader::both);
    }

    private static Quantity told(BigFraction base, Unit unit) {
        var number = unit.fromBase(base);
        var digits = Decimal.significant(number, 4).toPlainString();
        return new Quantity(base, unit, unit.symbol().isEmpty() ? digits : digits + " " + unit.symbol());
    }

    private static Bound both(Bound one, Bound other) {
        return one.withLimits(larger(one.min(), other.min(), true), larger(one.max(), other.max(), false));
    }

    private static @Nullable Quantity larger(@Nullable Quantity one, @Nullable Quantity other, boolean largest) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        var chosen = largest ? Fractions.max(one.base(), other.base()) : Fractions.min(one.base(), other.base());
        return chosen.equals(one.base()) ? one : other;
    }

    private void tellSettled(ObjectNode object, FittedResponse fitted, LeverEffect effect) {
        var middle = fitted.middle().get(fitted.effects().indexOf(effect));
        problems.remark(
                object.origin(),
                "\"" + fitted.response().name() + "\" follows \""
                        + effect.lever().name()
                        + "\", which no blend decides; it is taken as "
                        + Decimal.significant(middle, 4).toPlainString()
                        + ", the middle of the trials. Make it so.");
    }
}
