package panade.cli.interview;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import panade.domain.pantry.Ingredient;
import panade.intake.Beginning.Item;
import panade.sheet.WordList;

/**
 * An ingredient that questions may be asked about, new or in the pantry already.
 *
 * @param values names of what is known of it
 * @param isWhole whether what is not named is none
 */
record Known(String id, String name, Set<String> values, boolean isWhole, Set<String> kinds) {
    static Known of(Ingredient ingredient) {
        return new Known(
                ingredient.id(),
                ingredient.name(),
                ingredient.values().keySet(),
                ingredient.othersAreZero(),
                ingredient.kinds());
    }

    static Known of(Item item) {
        return new Known(item.id(), item.name(), item.values().keySet(), false, new HashSet<>(item.kinds()));
    }

    boolean knows(String value) {
        return isWhole || values.contains(value);
    }

    private boolean isCalled(String word) {
        var plain = word.toLowerCase(Locale.ROOT);
        return id.toLowerCase(Locale.ROOT).equals(plain)
                || name.toLowerCase(Locale.ROOT).equals(plain);
    }

    /** Those that a text names, by id or name with commas between; empty where it names something else. */
    static Optional<List<String>> named(String text, List<Known> all) {
        var ids = new ArrayList<String>();
        for (var word : WordList.read(text.replace(',', ';'))) {
            var found = all.stream().filter(known -> known.isCalled(word)).findFirst();
            if (found.isEmpty()) {
                return Optional.empty();
            }
            if (!ids.contains(found.get().id())) {
                ids.add(found.get().id());
            }
        }
        return Optional.of(ids);
    }

    /** Ids of those that somebody names. */
    static List<String> chosen(Dialogue dialogue, String question, List<Known> items, boolean mayBeNone) {
        return dialogue.ask(
                question,
                "",
                "Expected names among these, with commas: " + names(items) + ".",
                text -> named(text, items).filter(ids -> mayBeNone || !ids.isEmpty()));
    }

    /** Their names, with commas between. */
    static String names(List<Known> all) {
        return String.join(", ", all.stream().map(Known::name).toList());
    }
}
