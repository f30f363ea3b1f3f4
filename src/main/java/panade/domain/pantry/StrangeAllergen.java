package panade.domain.pantry;

import java.util.List;
import java.util.Set;
import panade.domain.origin.Origin;

/**
 * A word among an ingredient's allergens that no law's list knows: a label cannot be printed of it, since nobody can
 * tell what it stands for.
 *
 * @param origin where it is written, or its ingredient
 * @param ingredient the id of what carries it
 * @param word as written
 */
public record StrangeAllergen(Origin origin, String ingredient, String word) {
    /** Those of an ingredient, in alphabetical order; none when its allergens are not stated at all. */
    public static List<StrangeAllergen> of(Ingredient ingredient) {
        var stated = ingredient.allergens();
        return AllergenWords.unknown(stated == null ? Set.of() : stated).stream()
                .map(word -> new StrangeAllergen(ingredient.origin(), ingredient.id(), word))
                .toList();
    }

    /** What is wrong, without a full stop. */
    public String what() {
        return "No law's list knows the allergen \"" + shown() + "\" of \"" + ingredient + "\"";
    }

    /** What to write instead. */
    public String advice() {
        var near = AllergenWords.nearest(word)
                .map(found -> "Did you mean \"" + found + "\"? ")
                .orElse("");
        return near + "Expected words such as \"soy\", \"wheat\" or \"hazelnut\"; \"" + AllergenWords.OTHER
                + (shown().equals(word) ? word : "...") + "\" if it is meant to be on no list.";
    }

    private String shown() {
        return word.length() <= AllergenWords.LONGEST ? word : word.substring(0, AllergenWords.LONGEST) + "...";
    }
}
