package panade.label;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Allergens that a label must name: the nine of 21 USC 321(qq) and 343(w) with sesame since 2023, and the fourteen of
 * Regulation (EU) 1169/2011, Annex II. The words are those that an ingredient set may use, first those that tell it on
 * a label.
 */
enum AllergenGroup {
    MILK("milk", "milk", "milk;dairy|lactose|casein|whey"),
    EGG("egg", "eggs", "egg|eggs"),
    FISH("fish", "fish", "fish"),
    CRUSTACEANS(
            "crustacean shellfish",
            "crustaceans",
            "crustaceans|crustacean|crustacean shellfish;shellfish|shrimp|prawn|crab|lobster"),
    NUTS(
            "tree nuts",
            "nuts",
            "nut|nuts;tree nut|tree nuts|almond|almonds|hazelnut|hazelnuts|walnut|walnuts|cashew|cashews|pecan|pecans"
                    + "|brazil nut|brazil nuts|pistachio|pistachios|macadamia|macadamia nut"),
    PEANUTS("peanuts", "peanuts", "peanut|peanuts|groundnut"),
    WHEAT("wheat", "cereals containing gluten", "wheat;spelt|durum|kamut|khorasan"),
    GLUTEN(null, "cereals containing gluten", "gluten;cereals containing gluten|rye|barley|oats|oat"),
    SOY("soy", "soybeans", "soy|soya|soybean|soybeans|soja"),
    SESAME("sesame", "sesame seeds", "sesame|sesame seed|sesame seeds"),
    CELERY(null, "celery", "celery;celeriac"),
    MUSTARD(null, "mustard", "mustard"),
    SULPHITES(
            null,
            "sulphur dioxide and sulphites",
            "sulphites|sulfites|sulphite|sulfite;sulphur dioxide and sulphites|so2"),
    LUPIN(null, "lupin", "lupin|lupine|lupins"),
    MOLLUSCS(null, "molluscs", "mollusc|molluscs|mollusk|mollusks;squid|clam|oyster|mussel");

    private final @Nullable String us;
    private final String eu;
    private final String words;

    AllergenGroup(@Nullable String us, String eu, String words) {
        this.us = us;
        this.eu = eu;
        this.words = words;
    }

    /** What the law calls it; empty when that law does not name it. */
    Optional<String> name(Format format) {
        return format == Format.US ? Optional.ofNullable(us) : Optional.of(eu);
    }

    /** Whether the law wants the kind of it named: nuts, fish, crustaceans, cereals. */
    boolean wantsItsKind(Format format) {
        boolean cereal = this == WHEAT || this == GLUTEN;
        return this == NUTS || this == FISH || this == CRUSTACEANS || (cereal && format == Format.EU);
    }

    /** The group that an ingredient set's word belongs to. */
    static Optional<AllergenGroup> of(String word) {
        var plain = word.strip().toLowerCase(Locale.ROOT);
        return Stream.of(values())
                .filter(group -> group.words().contains(plain))
                .findFirst();
    }

    /** Words that stand for it in an ingredient set. */
    private List<String> words() {
        return List.of(words.split("[|;]", -1));
    }

    /**
     * Words of which one must stand in a name on the label for it to tell this allergen; of several kinds that the law
     * wants named, only the kind itself does, in the singular or the plural.
     *
     * @param stated the ingredient set's word for it
     */
    List<String> tellers(String stated, Format format) {
        if (!wantsItsKind(format)) {
            return List.of(words.split(";", -1)[0].split("\\|", -1));
        }
        var kind = stated.strip().toLowerCase(Locale.ROOT);
        return kind.endsWith("s") ? List.of(kind, kind.substring(0, kind.length() - 1)) : List.of(kind, kind + "s");
    }
}
