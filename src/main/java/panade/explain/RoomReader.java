package panade.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Verdict.Optimum;
import panade.certify.sensitivity.Neighbourhood;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Property;
import panade.explain.Room.IngredientRoom;
import panade.explain.Room.PropertyRoom;
import panade.model.LinearForm;

/** Measures the room around a least-cost blend. */
public final class RoomReader {
    private final Brief brief;
    private final CompiledBrief compiled;
    private final Neighbourhood neighbourhood;
    private final List<List<BigFraction>> points = new ArrayList<>();

    private RoomReader(Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum, BigFraction slack) {
        this.brief = brief;
        this.compiled = compiled;
        this.neighbourhood = PerCooked.of(brief, compiled, blend)
                .map(cooked ->
                        new Neighbourhood(optimum, cooked.form(), cooked.cost().multiply(slack)))
                .orElseGet(() -> new Neighbourhood(optimum, slack));
    }

    /** The room within a cost slack, which is a fraction of the least cost. */
    public static Room room(Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum, BigFraction slack) {
        var reader = new RoomReader(brief, compiled, blend, optimum, slack);
        var ingredients =
                brief.candidates().stream().sorted().map(reader::ingredient).toList();
        var properties = brief.set().properties().values().stream()
                .map(reader::property)
                .flatMap(Optional::stream)
                .toList();
        return new Room(slack, ingredients, properties, List.copyOf(reader.points));
    }

    /** The room of the properties alone. */
    public static List<PropertyRoom> properties(
            Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum, BigFraction slack) {
        var reader = new RoomReader(brief, compiled, blend, optimum, slack);
        return brief.set().properties().values().stream()
                .map(reader::property)
                .flatMap(Optional::stream)
                .toList();
    }

    private IngredientRoom ingredient(String id) {
        var form = compiled.shareOf(id);
        var least = neighbourhood.least(form);
        var most = neighbourhood.most(form);
        points.add(least.point());
        points.add(most.point());
        return new IngredientRoom(id, least.value(), most.value());
    }

    /** Empty when some candidate's value is not known, for that candidate might come in. */
    private Optional<PropertyRoom> property(Property property) {
        var form = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < compiled.columns().size(); j++) {
            var ingredient = compiled.columns().get(j).use().ingredient();
            var stated = brief.composition().stated(ingredient, property.id());
            if (stated.isEmpty()) {
                return Optional.empty();
            }
            form.put(j, stated.get());
        }
        return Optional.of(room(property, LinearForm.of(form)));
    }

    private PropertyRoom room(Property property, LinearForm form) {
        return new PropertyRoom(
                property.id(),
                property.unit(),
                neighbourhood.least(form).value(),
                neighbourhood.most(form).value());
    }
}
