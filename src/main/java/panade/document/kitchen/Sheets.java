package panade.document.kitchen;

import java.util.List;
import java.util.Set;

/** The sheets of a kitchen, and what stands under the heads of their columns. */
final class Sheets {
    static final String BRIEF = "Brief";
    static final String BOUNDS = "Bounds";
    static final String STAGES = "Stages";
    static final String INGREDIENTS = "Ingredients";
    static final String TRAITS = "Traits";
    static final String PRICES = "Prices";
    static final String SUPPLIERS = "Suppliers";

    static final List<String> NAMES = List.of(BRIEF, BOUNDS, STAGES, INGREDIENTS, TRAITS, PRICES, SUPPLIERS);

    /** The stage that a row of the bounds belongs to. */
    static final String IN_STAGE = "in stage";

    static final String SHARE_MIN = "share min";
    static final String SHARE_MAX = "share max";
    static final String SPREAD = "spread ";
    static final String TRAIT = "trait";
    static final String FIELD = "field";
    static final String VALUE = "value";
    static final String RULE = "rule";
    static final String PANTRY = "pantry";

    /** Columns and fields that hold one text whatever it looks like. */
    static final Set<String> TEXTS = Set.of(
            "title",
            "currency",
            "basedOn",
            "ingredients.path",
            "name",
            "state",
            "id",
            "label",
            "variantOf",
            "note",
            "source",
            "fibre",
            "unit");

    /** Columns and fields that hold a list of words. */
    static final Set<String> LISTS = Set.of(
            "kinds",
            "allergens",
            "madeOf",
            "method",
            "ingredients",
            "avoid.allergens",
            "avoid.ingredients",
            "only",
            "shelf.margins",
            "prices");

    /** Columns of the bounds that name something, or several things. */
    static final Set<String> NAMED = Set.of("property", "kind", "ingredient", "stage");

    /** Columns of the bounds that hold what is measured and its name, such as {@code kind texturate}. */
    static final Set<String> MEASURED = Set.of("within", "per");

    /** Columns about an ingredient; every other one is a component or a trait. */
    static final List<String> ABOUT = List.of(
            "id",
            "name",
            "label",
            "kinds",
            "allergens",
            "others",
            "maxUse",
            "usable",
            "variantOf",
            "note",
            "source",
            "madeOf",
            "labelIn",
            "additive",
            "fibre",
            "colours",
            "energyFactors",
            "digestibility",
            "values",
            "spread");

    /** Fields of a brief whose own fields have a row each. */
    static final List<String> OPENED = List.of("avoid", "costs", "shelf", "assume");

    private Sheets() {}
}
