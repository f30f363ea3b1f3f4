package panade.document.selector;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Expect;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.domain.Measure.Part;
import panade.domain.origin.Origin;
import panade.domain.pantry.IngredientSet;
import panade.quantity.Unit;

/** Reads the names under one selector, a text, a list or weights by name, and finds what they stand for. */
final class PickReader {
    /** A name with its weight, and where each was written. */
    private record Pick(Origin origin, String name, BigFraction weight) {}

    private final Names names;
    private final Expect expect;

    PickReader(Names names) {
        this.names = names;
        this.expect = new Expect(names.problems());
    }

    Optional<Selection> read(Field field) {
        int faultsBefore = names.problems().count();
        var picks = picks(field.value());
        boolean weighted = field.value() instanceof ObjectNode;
        if (picks.isEmpty()) {
            return field.name().equals("property") ? Optional.empty() : Optional.of(mass("", List.of(), false));
        }
        var known = picks.values().stream()
                .filter(pick -> isKnown(field.name(), pick))
                .toList();
        boolean sound = names.problems().count() == faultsBefore && names.set().isPresent();
        return Optional.of(select(field.name(), String.join("+", picks.keySet()), known, weighted, sound));
    }

    private Selection select(String selector, String name, List<Pick> picks, boolean weighted, boolean sound) {
        return switch (selector) {
            case "property" -> properties(name, picks, sound);
            case "stage" -> mass(name, picks.stream().map(this::stagePart).toList(), sound);
            case "kind" -> mass(name, List.of(part(ofKinds(picks, weighted))), sound);
            default -> mass(name, List.of(part(ofIngredients(picks))), sound);
        };
    }

    private static Selection mass(String name, List<Part> parts, boolean sound) {
        return new Selection(name, Optional.of(Unit.PERCENT), true, parts, sound);
    }

    private Selection properties(String name, List<Pick> picks, boolean sound) {
        var weights = new LinkedHashMap<String, BigFraction>();
        boolean alike = true;
        for (var pick : picks) {
            weights.put(pick.name(), pick.weight());
            alike &= isMeasuredLike(picks.get(0), pick);
        }
        var unit = picks.stream().findFirst().flatMap(this::unitOf);
        var part = new Part(Map.copyOf(weights), everything(names), null);
        return new Selection(name, unit, false, List.of(part), sound && alike);
    }

    private Optional<Unit> unitOf(Pick pick) {
        return names.set().map(set -> set.property(pick.name()).unit());
    }

    private boolean isMeasuredLike(Pick first, Pick other) {
        var one = unitOf(first);
        var two = unitOf(other);
        boolean alike = one.isEmpty() || two.isEmpty() || one.get().measuresLike(two.get());
        if (!alike) {
            var what = "\"" + other.name() + "\" is not measured like \"" + first.name() + "\"";
            names.problems().add(other.origin(), what, "Expected properties that are measured alike.");
        }
        return alike;
    }

    private boolean isKnown(String selector, Pick pick) {
        return switch (selector) {
            case "property" -> names.knowsProperty(pick.origin(), pick.name());
            case "stage" -> names.knowsStage(pick.origin(), pick.name());
            case "kind" -> names.knowsKind(pick.origin(), pick.name());
            default -> names.knowsIngredient(pick.origin(), pick.name());
        };
    }

    private Map<String, Pick> picks(Node node) {
        var picks = new LinkedHashMap<String, Pick>();
        if (node instanceof TextNode text) {
            put(picks, text);
        } else if (node instanceof ArrayNode list) {
            list.items().forEach(item -> expect.text(item, "a name").ifPresent(text -> put(picks, text)));
            tellIfEmpty(node, list.items());
        } else if (node instanceof ObjectNode object) {
            object.fields().forEach(field -> putWeighted(picks, field));
            tellIfEmpty(node, object.fields());
        } else {
            expect.refuse(node, "a name, a list of names, or weights by name");
        }
        return picks;
    }

    private void tellIfEmpty(Node node, List<?> names) {
        if (names.isEmpty()) {
            expect.problems().add(node.origin(), "Nothing is named here", "Expected at least one name.");
        }
    }

    private static void put(Map<String, Pick> picks, TextNode text) {
        picks.put(text.text(), new Pick(text.origin(), text.text(), BigFraction.ONE));
    }

    private void putWeighted(Map<String, Pick> picks, Field field) {
        var weight = expect.number(field.value(), "a bare number as the weight in the sum, such as 1 or 5.5")
                .map(NumberNode::value);
        picks.put(field.name(), new Pick(field.nameOrigin(), field.name(), weight.orElse(BigFraction.ONE)));
    }

    private Part part(Map<String, BigFraction> ingredients) {
        return new Part(Map.of(), Map.copyOf(ingredients), null);
    }

    // In a list an ingredient of several of its kinds counts once; where weights are written they add up, also when
    // each of them is 1.
    private Map<String, BigFraction> ofKinds(List<Pick> picks, boolean weighted) {
        var weights = new LinkedHashMap<String, BigFraction>();
        for (var pick : picks) {
            names.set()
                    .map(set -> set.ofKind(pick.name()))
                    .ifPresent(ids -> ids.forEach(
                            id -> weights.merge(id, pick.weight(), (old, more) -> weighted ? old.add(more) : old)));
        }
        return weights;
    }

    private Map<String, BigFraction> ofIngredients(List<Pick> picks) {
        var named = new LinkedHashMap<String, BigFraction>();
        picks.forEach(pick -> named.put(pick.name(), pick.weight()));
        var weights = new LinkedHashMap<String, BigFraction>();
        names.set()
                .ifPresent(set -> set.ingredients().keySet().forEach(id -> {
                    var weight = weightOf(id, named, set);
                    if (weight != null) {
                        weights.put(id, weight);
                    }
                }));
        return weights;
    }

    // A lot without a weight of its own has that of the ingredient it is a lot of; a circle of lots ends somewhere.
    private static @Nullable BigFraction weightOf(String id, Map<String, BigFraction> named, IngredientSet set) {
        String lot = id;
        for (int i = 0; lot != null && i <= set.ingredients().size(); i++) {
            var weight = named.get(lot);
            if (weight != null) {
                return weight;
            }
            var ingredient = set.ingredients().get(lot);
            lot = ingredient == null ? null : ingredient.variantOf();
        }
        return null;
    }

    private Part stagePart(Pick pick) {
        var all = new LinkedHashMap<String, BigFraction>();
        everything(names).keySet().forEach(id -> all.put(id, pick.weight()));
        return new Part(Map.of(), Map.copyOf(all), pick.name());
    }

    /** All that is in a stage, by weight. */
    static Part stagePart(String stage, Names names) {
        return new Part(Map.of(), everything(names), stage);
    }

    /** All that there is, by weight. */
    static Part everywhere(Names names) {
        return new Part(Map.of(), everything(names), null);
    }

    private static Map<String, BigFraction> everything(Names names) {
        var all = new LinkedHashMap<String, BigFraction>();
        names.set().ifPresent(set -> set.ingredients().keySet().forEach(id -> all.put(id, BigFraction.ONE)));
        return Map.copyOf(all);
    }
}
