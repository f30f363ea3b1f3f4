package panade.document.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.domain.origin.Origin;

/** Weights that stand row by row, gathered as a formula has them: by stage, then by ingredient. */
final class StagedWeights {
    /** What a row says of an ingredient, and where it names it. */
    private record Line(Origin origin, List<Node> amounts) {
        private Field field(String ingredient) {
            var amount = amounts.size() == 1 ? amounts.get(0) : new ArrayNode(origin, List.copyOf(amounts));
            return new Field(ingredient, origin, amount);
        }
    }

    private final Map<String, Map<String, Line>> stages = new LinkedHashMap<>();
    private final Map<String, Origin> places = new LinkedHashMap<>();

    /**
     * Adds a row.
     *
     * @param supplier null where none is named
     */
    void add(String stage, Origin place, Field ingredient, @Nullable Node supplier) {
        var fields = new ArrayList<Field>();
        fields.add(new Field("amount", ingredient.value().origin(), ingredient.value()));
        if (supplier != null) {
            fields.add(new Field("supplier", supplier.origin(), supplier));
        }
        places.putIfAbsent(stage, place);
        stages.computeIfAbsent(stage, each -> new LinkedHashMap<>())
                .computeIfAbsent(ingredient.name(), each -> new Line(ingredient.nameOrigin(), new ArrayList<>()))
                .amounts()
                .add(new ObjectNode(ingredient.nameOrigin(), fields));
    }

    /** The rows as the document of a formula. */
    ObjectNode formula(Origin origin) {
        var made = new ArrayList<Field>();
        places.forEach((stage, place) -> {
            var fields = new ArrayList<Field>();
            stages.getOrDefault(stage, Map.of()).forEach((name, line) -> fields.add(line.field(name)));
            made.add(new Field(stage, place, new ObjectNode(place, fields)));
        });
        return new ObjectNode(origin, List.of(new Field("made", origin, new ObjectNode(origin, made))));
    }
}
