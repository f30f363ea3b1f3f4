package panade.domain.pantry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Allergens that a label must name: the nine of 21 USC 321(qq) and 343(w) with sesame since 2023, and the fourteen of
 * Regulation (EU) 1169/2011, Annex II.
 */
public enum AllergenGroup {
    MILK(
            "milk",
            "milk",
            "milk",
            "milk: dairy, lactose, casein, caseinate, whey, milk powder, milk protein, skim milk, skimmed milk, whole milk,"
                    + " butter, buttermilk, cheese, cream, yogurt, yoghurt"),
    EGG("egg", "eggs", "egg", "egg: eggs, egg white, egg whites, egg yolk, egg yolks, egg powder, albumen"),
    FISH(
            "fish",
            "fish",
            "fish: fish sauce",
            "anchovy: anchovies; bass; cod; flounder; haddock; herring; mackerel; pollock; salmon; sardine: sardines; trout;"
                    + " tuna"),
    CRUSTACEANS(
            "crustacean shellfish",
            "crustaceans",
            "crustaceans: crustacean, crustacean shellfish; shellfish",
            "shrimp: shrimps; prawn: prawns; crab: crabs; lobster: lobsters; crayfish; krill"),
    NUTS(
            "tree nuts",
            "nuts",
            "tree nuts: nut, nuts, tree nut",
            "almond: almonds; hazelnut: hazelnuts, filbert, filberts; walnut: walnuts; cashew: cashews, cashew nut, cashew"
                    + " nuts; pecan: pecans, pecan nut, pecan nuts; brazil nut: brazil nuts; pistachio: pistachios, pistachio"
                    + " nut, pistachio nuts; macadamia nut: macadamia, macadamia nuts, macadamias; pine nut: pine nuts"),
    PEANUTS("peanuts", "peanuts", "peanuts", "peanuts: peanut, groundnut, groundnuts, peanut butter"),
    WHEAT(
            "wheat",
            "cereals containing gluten",
            "wheat",
            "wheat: wheat gluten, wheat flour, wheat protein, wheat starch, wheat bran, whole wheat, vital wheat gluten,"
                    + " seitan, semolina, bulgur, couscous, farina; spelt; durum: durum wheat; kamut; khorasan: khorasan"
                    + " wheat; einkorn; emmer; triticale"),
    GLUTEN(
            null,
            "cereals containing gluten",
            "gluten: cereals containing gluten, cereal containing gluten",
            "rye: rye flour; barley: barley malt, malt, malt extract; oats: oat, oat flour, oat fibre, oat fiber"),
    SOY(
            "soy",
            "soybeans",
            "soy",
            "soy: soya, soybean, soybeans, soy bean, soy beans, soya bean, soya beans, soja, soy protein, soya protein, soy"
                    + " lecithin, soya lecithin, soy flour, soya flour, soy sauce, tofu, edamame"),
    SESAME(
            "sesame",
            "sesame seeds",
            "sesame",
            "sesame: sesame seed, sesame seeds, sesame oil, toasted sesame oil, tahini"),
    CELERY(null, "celery", "celery", "celery: celeriac, celery seed, celery root"),
    MUSTARD(null, "mustard", "mustard", "mustard: mustard seed, mustard seeds, mustard flour"),
    SULPHITES(
            null,
            "sulphur dioxide and sulphites",
            "sulphites",
            "sulphites: sulfites, sulphite, sulfite, sulphur dioxide, sulfur dioxide, sulphur dioxide and sulphites, so2"),
    LUPIN(null, "lupin", "lupin", "lupin: lupine, lupins, lupines, lupin flour"),
    MOLLUSCS(
            null,
            "molluscs",
            "molluscs: mollusc, mollusk, mollusks, molluscan shellfish",
            "squid; clam: clams; oyster: oysters, oyster sauce; mussel: mussels; scallop: scallops; octopus; snail: snails");

    private final @Nullable String us;
    private final String eu;
    private final String general;
    private final String kinds;

    /**
     * A group.
     *
     * @param us its name in the United States; null where that law does not list it
     * @param eu its name in the Union
     * @param general words for all of it, each after a colon with other words for the same
     * @param kinds words for single kinds, each with other words for it; for a group without kinds the general word's
     *     own
     */
    AllergenGroup(@Nullable String us, String eu, String general, String kinds) {
        this.us = us;
        this.eu = eu;
        this.general = general;
        this.kinds = kinds;
    }

    private static Map<String, String> words(String table) {
        var words = new LinkedHashMap<String, String>();
        for (var entry : table.split(";", -1)) {
            var sides = entry.split(":", -1);
            var word = sides[0].strip();
            words.put(word, word);
            for (var other : sides.length == 1 ? List.<String>of() : List.of(sides[1].split(",", -1))) {
                words.put(other.strip(), word);
            }
        }
        return words;
    }

    /** What the law of the United States calls it; empty when that law does not name it. */
    public Optional<String> nameInTheStates() {
        return Optional.ofNullable(us);
    }

    /** What the law of the Union calls it. */
    public String nameInTheUnion() {
        return eu;
    }

    /** Words that stand for it, each with the one word that it is kept as. */
    public Map<String, String> words() {
        return words(general + "; " + kinds);
    }

    /** Whether a word that is kept stands for all of the group, not for one kind in it. */
    public boolean isGeneral(String word) {
        return words(general).containsValue(word);
    }

    /** The group that a word belongs to, as kept or as written. */
    public static Optional<AllergenGroup> of(String word) {
        return AllergenWords.group(word);
    }
}
