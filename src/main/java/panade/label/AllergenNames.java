package panade.label;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import panade.domain.pantry.AllergenGroup;
import panade.label.nutrition.Format;

/** What the laws call the allergens of an ingredient set, and which words on a label tell them. */
final class AllergenNames {
    private static final Map<String, List<String>> SPELLINGS = Map.of(
            "soy", List.of("soya", "soybean", "soybeans", "soja"),
            "tree nuts", List.of("nut", "nuts"),
            "peanuts", List.of("groundnut", "groundnuts"),
            "macadamia nut", List.of("macadamia", "macadamias"),
            "anchovy", List.of("anchovies"),
            "sulphites", List.of("sulfite", "sulfites", "sulphur dioxide", "sulfur dioxide"),
            "lupin", List.of("lupine", "lupines"),
            "molluscs", List.of("mollusk", "mollusks"));

    private AllergenNames() {}

    /** What the law calls a group; empty when that law does not name it. */
    static Optional<String> name(AllergenGroup group, Format format) {
        return format == Format.US ? group.nameInTheStates() : Optional.of(group.nameInTheUnion());
    }

    /** Whether the law wants the kind of it named: nuts, fish, crustaceans, cereals. */
    static boolean wantsKinds(AllergenGroup group, Format format) {
        return switch (group) {
            case NUTS, FISH, CRUSTACEANS -> true;
            case WHEAT, GLUTEN -> format == Format.EU;
            default -> false;
        };
    }

    /** The law's name for a word of the ingredient set, with the kind where the law wants that; empty if not listed. */
    static Optional<String> name(String word, Format format) {
        var group = AllergenGroup.of(word);
        var name = group.flatMap(found -> name(found, format));
        boolean kind = group.filter(found -> wantsKinds(found, format) && isKind(found, word))
                .isPresent();
        return name.map(found -> kind && !found.equals(word) ? found + " (" + word + ")" : found);
    }

    /** Wheat is the general word of its own group and one of the kinds of cereal. */
    private static boolean isKind(AllergenGroup group, String word) {
        return group == AllergenGroup.WHEAT || !group.isGeneral(word);
    }

    /**
     * Words of which one must stand in a name on the label for it to tell this allergen: the word itself in the
     * singular and the plural, and other spellings of the same. That wheat gluten is from wheat is told, that cheese is
     * from milk is not.
     *
     * @param stated the ingredient set's word for it
     */
    static List<String> tellers(String stated) {
        var own = stated.endsWith("s")
                ? List.of(stated, stated.substring(0, stated.length() - 1))
                : List.of(stated, stated + "s");
        return AllergenGroup.of(stated).isEmpty()
                ? List.of()
                : Stream.concat(own.stream(), SPELLINGS.getOrDefault(stated, List.of()).stream())
                        .toList();
    }
}
