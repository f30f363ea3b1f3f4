package panade.label;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Allergens that a label must name: the nine of 21 USC 321(qq) and 343(w) with sesame since 2023, and the fourteen of
 * Regulation (EU) 1169/2011, Annex II. The words are those that an ingredient set may use.
 */
enum AllergenGroup {
    MILK("milk", "milk", "milk|dairy|lactose|casein|whey|butter"),
    EGG("egg", "eggs", "egg|eggs"),
    FISH("fish", "fish", "fish"),
    CRUSTACEANS(
            "crustacean shellfish",
            "crustaceans",
            "crustacean shellfish|crustacean|crustaceans|shellfish|shrimp|prawn|crab|lobster"),
    NUTS(
            "tree nuts",
            "nuts",
            "tree nut|tree nuts|nut|nuts|almond|almonds|hazelnut|hazelnuts|walnut|walnuts|cashew|cashews|pecan|pecans"
                    + "|brazil nut|brazil nuts|pistachio|pistachios|macadamia|macadamia nut"),
    PEANUTS("peanuts", "peanuts", "peanut|peanuts|groundnut"),
    WHEAT("wheat", "cereals containing gluten", "wheat|spelt|durum|kamut|khorasan|seitan"),
    GLUTEN(null, "cereals containing gluten", "cereals containing gluten|gluten|rye|barley|oats|oat|malt"),
    SOY("soy", "soybeans", "soy|soya|soybean|soybeans|soja"),
    SESAME("sesame", "sesame seeds", "sesame|sesame seed|sesame seeds"),
    CELERY(null, "celery", "celery|celeriac"),
    MUSTARD(null, "mustard", "mustard"),
    SULPHITES(
            null,
            "sulphur dioxide and sulphites",
            "sulphur dioxide and sulphites|sulphites|sulfites|sulphite|sulfite|so2"),
    LUPIN(null, "lupin", "lupin|lupine|lupins"),
    MOLLUSCS(null, "molluscs", "mollusc|molluscs|mollusk|mollusks|squid|clam|oyster|mussel");

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

    /** Words that name it in an ingredient set or on a label. */
    List<String> words() {
        return List.of(words.split("\\|", -1));
    }
}
