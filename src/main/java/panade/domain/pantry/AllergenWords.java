package panade.domain.pantry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * Reads allergens as cooks and suppliers write them, in one place for all documents: several in one text, with commas,
 * semicolons and the like between them, and different words for one thing.
 */
public final class AllergenWords {
    /** Before a word that is meant to be on no law's list, such as {@code other: kiwi}. */
    public static final String OTHER = "other: ";

    /** What stands for none at all. */
    private static final String NONE = "none";

    /** Known, and on neither list: coconut left FDA's tree nuts in January 2025, buckwheat is Japan's (from memory). */
    private static final Set<String> UNLISTED = Set.of("coconut", "buckwheat");

    /** Longer words are looked up in no list of near ones, and shown cut. */
    static final int LONGEST = 60;

    private static final String ALWAYS = "[,;\\r\\n]";
    private static final String WHERE_KNOWN = "[,;\\r\\n/&+()]|\\band\\b";

    private static final Map<String, AllergenGroup> GROUPS = groups();
    private static final Map<String, String> KEPT = kept();

    private AllergenWords() {}

    private static Map<String, AllergenGroup> groups() {
        var groups = new HashMap<String, AllergenGroup>();
        for (var group : AllergenGroup.values()) {
            group.words().keySet().forEach(word -> groups.put(word, group));
        }
        return Map.copyOf(groups);
    }

    private static Map<String, String> kept() {
        var kept = new HashMap<String, String>();
        for (var group : AllergenGroup.values()) {
            kept.putAll(group.words());
        }
        return Map.copyOf(kept);
    }

    /**
     * The allergens in a text, each as the one word it is kept as; a word that is not known stays as it is written.
     * None for {@code none}.
     */
    public static List<String> read(String text) {
        if (plain(text).equals(NONE)) {
            return List.of();
        }
        var whole = Optional.of(plain(text)).filter(AllergenWords::isKnown);
        if (whole.isPresent()) {
            return List.of(kept(whole.get()));
        }
        var finely = parts(text, WHERE_KNOWN);
        var parts = finely.stream().allMatch(AllergenWords::isKnown) ? finely : parts(text, ALWAYS);
        var kept = parts.stream().map(AllergenWords::kept).distinct().toList();
        return text.indexOf('(') < 0 ? kept : withoutGeneral(kept);
    }

    private static List<String> parts(String text, String separator) {
        return Arrays.stream(text.split(separator, -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    /** In "nuts (hazelnut)" the kind in brackets says more than the word before. */
    private static List<String> withoutGeneral(List<String> words) {
        var kept = new ArrayList<>(words);
        kept.removeIf(word -> group(word)
                .filter(group -> group.isGeneral(word))
                .filter(group -> words.stream()
                        .anyMatch(other -> !other.equals(word)
                                && group(other)
                                        .filter(AllergenWords.like(group))
                                        .isPresent()))
                .isPresent());
        return kept;
    }

    private static Predicate<AllergenGroup> like(AllergenGroup group) {
        return other -> other.nameInTheUnion().equals(group.nameInTheUnion());
    }

    private static String plain(String word) {
        return word.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    private static String kept(String word) {
        var plain = plain(word);
        return KEPT.getOrDefault(plain, isKnown(plain) ? plain : word.strip());
    }

    /** The group that a word belongs to; empty for a word that is on neither list. */
    static Optional<AllergenGroup> group(String word) {
        return Optional.ofNullable(GROUPS.get(plain(word)));
    }

    /** Whether the word means something to a law's list, or says that it is meant for none. */
    public static boolean isKnown(String word) {
        var plain = plain(word);
        return GROUPS.containsKey(plain)
                || UNLISTED.contains(plain)
                || (plain.startsWith(OTHER) && parts(word, ALWAYS).size() == 1);
    }

    /** Words of a set that no law's list knows, in alphabetical order. */
    public static List<String> unknown(Set<String> words) {
        return new TreeSet<>(words).stream().filter(word -> !isKnown(word)).toList();
    }

    /** The known word that an unknown one was most likely meant for. */
    public static Optional<String> nearest(String word) {
        var plain = plain(word);
        if (plain.length() > LONGEST) {
            return Optional.empty();
        }
        var within = GROUPS.keySet().stream()
                .filter(known -> (" " + plain + " ").contains(" " + known + " "))
                .max(Comparator.comparing(String::length).thenComparing(Comparator.naturalOrder()));
        return within.or(() -> closest(plain)).map(AllergenWords::kept);
    }

    private static Optional<String> closest(String plain) {
        int most = Math.max(1, plain.length() / 3);
        return GROUPS.keySet().stream()
                .filter(known -> distance(plain, known) <= most)
                .min(Comparator.comparing((String known) -> distance(plain, known))
                        .thenComparing(known -> !known.equals(kept(known)))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static int distance(String one, String other) {
        return LevenshteinDistance.getDefaultInstance().apply(one, other);
    }

    /**
     * Whether something that states one word may carry what another word stands for: the same, a kind of it, or a
     * general word that may mean it. "Shellfish" stands for molluscs as well, gluten for every cereal that has it. A
     * word that looks like a slip for it counts.
     */
    public static boolean mayBe(String stated, String avoided) {
        if (plain(stated).equals(plain(avoided))) {
            return true;
        }
        if (!isKnown(stated)) {
            return nearest(stated).filter(near -> mayBe(near, avoided)).isPresent();
        }
        if (!isKnown(avoided)) {
            return nearest(avoided).filter(near -> mayBe(stated, near)).isPresent();
        }
        var one = group(stated);
        var other = group(avoided);
        return one.isPresent()
                && other.isPresent()
                && (overlap(one.get(), stated, other.get(), avoided)
                        || overlap(other.get(), avoided, one.get(), stated));
    }

    private static boolean overlap(AllergenGroup wide, String wideWord, AllergenGroup narrow, String narrowWord) {
        boolean same = wide == narrow
                && (wide.isGeneral(kept(wideWord)) || kept(wideWord).equals(kept(narrowWord)));
        boolean cereal =
                wide == AllergenGroup.GLUTEN && wide.isGeneral(kept(wideWord)) && narrow == AllergenGroup.WHEAT;
        boolean shellfish = plain(wideWord).equals("shellfish") && narrow == AllergenGroup.MOLLUSCS;
        return same || cereal || shellfish;
    }
}
