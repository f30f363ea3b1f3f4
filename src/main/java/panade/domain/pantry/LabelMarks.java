package panade.domain.pantry;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a law says of an ingredient on a label, as the ingredient set states it.
 *
 * @param names its name by the law of the United States ({@code us}) or the Union ({@code eu}) where that is not its
 *     label
 * @param additive the class and number that the Union wants of an additive; null when it is none, or nobody says
 * @param fibre what isolated fibre its fibre is, {@link IsolatedFibre#INTACT} for none; null when nobody says
 * @param colours whether it is there for its colour as well, as paprika is
 */
public record LabelMarks(
        Map<String, String> names,
        @Nullable Additive additive,
        @Nullable String fibre,
        boolean colours) {
    /** Nothing said. */
    public static final LabelMarks NONE = new LabelMarks(Map.of(), null, null, false);

    public LabelMarks {
        names = Map.copyOf(names);
    }

    /**
     * An additive's place in the list of ingredients: Regulation (EU) 1169/2011, Annex VII, Part C.
     *
     * @param category the class it works as
     * @param number its E number; empty when not stated
     */
    public record Additive(String category, String number) {
        /** The classes of that part (from memory). */
        public static final List<String> CLASSES = List.of(
                "acid",
                "acidity regulator",
                "anti-caking agent",
                "anti-foaming agent",
                "antioxidant",
                "bulking agent",
                "colour",
                "emulsifier",
                "emulsifying salts",
                "firming agent",
                "flavour enhancer",
                "flour treatment agent",
                "foaming agent",
                "gelling agent",
                "glazing agent",
                "humectant",
                "modified starch",
                "preservative",
                "propellent gas",
                "raising agent",
                "sequestrant",
                "stabiliser",
                "sweetener",
                "thickener");
    }
}
