package panade.document.kitchen;

import java.util.List;
import java.util.Map;
import java.util.Set;
import panade.sheet.ColumnHelp;

/** What the heads of a kitchen's columns, and the fields of its brief, mean. */
final class Heads {
    private static final Set<String> LONG = Set.of(
            "name",
            "title",
            "id",
            "value",
            "what it means",
            "ingredient",
            "supplier",
            "note",
            "source",
            "method",
            "ingredients",
            "sum",
            "within",
            "per",
            "field");
    private static final Set<String> TEXT = Set.of(
            "min",
            "max",
            Sheets.SHARE_MIN,
            Sheets.SHARE_MAX,
            "maxUse",
            "usable",
            "weighing",
            Sheets.VALUE,
            "pack",
            "minimum",
            "available",
            "id",
            "unit");

    private static final Map<String, String> NOTES = Map.ofEntries(
            Map.entry("Bounds name", "What you call this wish; it is called so in every answer."),
            Map.entry("Bounds in stage", "Only where it is about one stage alone: its id. Blank: the whole batch."),
            Map.entry(
                    "Bounds property",
                    "What is measured: a component such as FAT or NA, or a trait of your own."
                            + " Fill one of property, kind, ingredient, stage or sum."),
            Map.entry("Bounds kind", "Or the amount of all ingredients of a kind. Several: a; b."),
            Map.entry("Bounds ingredient", "Or the amount of an ingredient, by its id. Several: a; b."),
            Map.entry("Bounds stage", "Or the amount of a whole stage, by its id."),
            Map.entry("Bounds sum", "Or several of these added up, in brackets as in a document."),
            Map.entry("Bounds within", "Only inside something: such as kind texturate, or stage soak."),
            Map.entry("Bounds per", "Measured against something else than the batch: such as property PROCNT."),
            Map.entry("Bounds min", "At least this, with its unit: 18 %, 420 mg/100g, 2 kg."),
            Map.entry("Bounds max", "At most this, with its unit. The same as min: exactly this."),
            Map.entry("Bounds state", "raw, or cooked where cooking losses are given."),
            Map.entry(
                    "Bounds sure",
                    "How often it is to hold although lots differ: 95 %. Needs spread columns in Ingredients."),
            Map.entry("Bounds learned", "Or what trials taught: the name of a response, such as break."),
            Map.entry("Bounds of", "Of what trials taught: batch, the next one, or mean, that of many."),
            Map.entry("Stages id", "A short name for the stage. What no stage names goes into the stage mix."),
            Map.entry("Stages kinds", "Kinds of ingredients that go into it: a; b."),
            Map.entry("Stages ingredients", "Ids of ingredients that may go into it: a; b."),
            Map.entry("Stages share min", "At least this share of the batch: 15 %."),
            Map.entry("Stages share max", "At most this share of the batch: 30 %."),
            Map.entry("Stages method", "What to do, step by step, with semicolons between the steps."),
            Map.entry("Stages weighing", "The resolution of the scale for this stage: 0.1 g."),
            Map.entry("Ingredients id", "A short name; prices, bounds and stages use it."),
            Map.entry("Ingredients name", "How it is called in answers; blank: the id."),
            Map.entry("Ingredients label", "How it is called on the label; blank: the name."),
            Map.entry("Ingredients kinds", "What sort of thing it is, in your own words: protein; texturate."),
            Map.entry("Ingredients allergens", "Such as soy; none where there are none. Blank: not known."),
            Map.entry("Ingredients others", "0: it holds nothing of what no column tells. Blank: that is not known."),
            Map.entry("Ingredients maxUse", "The most that may be used, as a share of the batch: 35 %."),
            Map.entry("Ingredients usable", "What is left after trimming: 98 %. Blank: all."),
            Map.entry("Ingredients variantOf", "The id of the ingredient that this is another lot of."),
            Map.entry("Ingredients note", "For yourself."),
            Map.entry("Ingredients source", "Where the figures come from."),
            Map.entry(
                    "Traits trait",
                    "A figure of your own for ingredients, such as bite. Its column is in Ingredients."),
            Map.entry("Traits unit", "Such as g/g; blank for scores."),
            Map.entry("Traits absent", "What it is where an ingredient's cell is blank; mostly 0."),
            Map.entry("Traits sum", "If it is a sum of others: 4 x PROCNT; 9 x FAT."),
            Map.entry("Prices ingredient", "The id of an ingredient of the sheet Ingredients."),
            Map.entry("Prices supplier", "Who sells it."),
            Map.entry("Prices price", "Money for the weight beside."),
            Map.entry("Prices per", "The weight that the price is for: kg, lb, 20 kg."),
            Map.entry("Prices pack", "The smallest quantity sold: 25 kg."),
            Map.entry("Prices minimum", "The smallest order of it: 100 kg."),
            Map.entry("Prices available", "The most that can be had; 0 kg: out of stock. Blank: enough."),
            Map.entry("Suppliers supplier", "As in the sheet Prices."),
            Map.entry("Suppliers minimumOrder", "The least an order must come to, in money."),
            Map.entry("Suppliers delivery", "What a delivery costs."),
            Map.entry("Suppliers leadDays", "Days from order to delivery."));

    private static final Map<String, String> FIELDS = Map.ofEntries(
            Map.entry("title", "What you call the product."),
            Map.entry("currency", "The currency of all prices, such as USD."),
            Map.entry("batch", "The weight made at once: 20 lb. It must be there."),
            Map.entry("target", "The price you hope for: 3.90/lb."),
            Map.entry("avoid.allergens", "Allergens that must not be in it: soy; gluten."),
            Map.entry("avoid.ingredients", "Ids of ingredients not to use: a; b."),
            Map.entry("only", "Ids of the only ingredients to use: a; b. Blank: all."),
            Map.entry("maxIngredients", "The most names on the label."),
            Map.entry("weighing", "The resolution of the scale: 1 g."),
            Map.entry("serving", "The weight of a serving: 113 g."),
            Map.entry("costBasis", "raw, or cooked: least cost per cooked weight."),
            Map.entry("cooking", "What cooking takes away, in braces as in a document."),
            Map.entry(Sheets.RULE, "A rule, in braces as in a document; one row each."),
            Map.entry("pantry.title", "What you call the pantry."),
            Map.entry("pantry.source", "Where its figures come from."));

    private static final Map<String, List<String>> CHOICES = Map.of(
            "Bounds state", List.of("raw", "cooked"),
            "Bounds of", List.of("batch", "mean"),
            "Ingredients others", List.of("0"),
            "Ingredients allergens",
                    List.of("none", "soy", "gluten", "wheat", "milk", "egg", "peanut", "sesame", "mustard", "celery"),
            "Prices per", List.of("kg", "lb", "oz", "g", "20 kg", "25 kg"));

    private static final Map<String, String> FROM = Map.of(
            "Bounds in stage", "Stages!$A$2:$A$50",
            "Bounds stage", "Stages!$A$2:$A$50",
            "Bounds ingredient", "Ingredients!$A$2:$A$300",
            "Bounds property", "Ingredients!$L$1:$AZ$1",
            "Prices ingredient", "Ingredients!$A$2:$A$300",
            "Prices supplier", "Suppliers!$A$2:$A$100",
            "Ingredients variantOf", "Ingredients!$A$2:$A$300");

    private Heads() {}

    static boolean isLong(String head) {
        return LONG.contains(head);
    }

    /** What a field of the brief means; empty where its name says it. */
    static String field(String name) {
        return FIELDS.getOrDefault(name, "");
    }

    static ColumnHelp help(String sheet, String head, int column) {
        var key = sheet + " " + head;
        var note = NOTES.getOrDefault(key, isFigure(sheet, head) ? figure(head) : "");
        return new ColumnHelp(
                column, note, CHOICES.getOrDefault(key, List.of()), FROM.getOrDefault(key, ""), TEXT.contains(head));
    }

    private static boolean isFigure(String sheet, String head) {
        return sheet.equals(Sheets.INGREDIENTS) && !Sheets.ABOUT.contains(head);
    }

    private static String figure(String head) {
        return head.startsWith(Sheets.SPREAD)
                ? "How far " + head.substring(Sheets.SPREAD.length()) + " differs from lot to lot (standard deviation)."
                : "How much 100 g of it hold: g, but mg for minerals and amino acids; a trait as the sheet Traits says."
                        + " Blank: not known.";
    }
}
