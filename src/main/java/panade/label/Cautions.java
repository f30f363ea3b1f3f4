package panade.label;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.pantry.Ingredient;
import panade.label.nutrition.Amount;
import panade.label.nutrition.Format;

/** What to mind about a label and the food behind it, each with who says so. */
final class Cautions {
    private static final Caution DRAFT = new Caution(
            "A draft, worked out from the values you gave. Have it checked by a licensed laboratory or label reviewer;"
                    + " local law decides.",
            "common practice, no source");

    private static final List<Caution> COMMON = List.of(
            new Caution(
                    "Raw or cooked, a moist plant mince needs time and temperature control: hold it at 41 F (5 C) or"
                            + " below, or hot at 135 F (57 C) or above; made from ingredients at room temperature, it is to be"
                            + " at 41 F within 4 hours.",
                    "FDA Food Code 2022, 3-501.14(B) and 3-501.16"),
            new Caution(
                    "Soak dry minces in cold water: spores of Bacillus cereus survive extrusion and grow in the warm.",
                    "Acta Vet. Brno 94 (2025) 317, which found it in all of 11 plant-based products; extrusion from memory"),
            new Caution(
                    "A date: at most 7 days, the day of making counted as the first; fewer unless a laboratory says more; never"
                            + " later than the oldest ingredient's own date; or freeze. The 7 days are a ceiling for ready-to-eat"
                            + " food held over 24 hours, and this is raw; they are not a shelf-life study.",
                    "FDA Food Code 2022, 3-501.17"),
            new Caution(
                    "Who packs tubs for sale in other places needs a food-safety plan, not the retail code; film and vacuum"
                            + " packs in a kitchen need a plan of their own.",
                    "21 CFR 117; FDA Food Code 2022, 3-502.12 (both from memory)"),
            new Caution(
                    "Allergens are those that the ingredient set states. Mind cross-contact in the kitchen and what"
                            + " suppliers say on their own labels; \"may contain\" is no substitute for clean work.",
                    "21 USC 343(w); FDA Food Code 2022, 3-302.11"));

    private static final Caution GLUTEN = new Caution(
            "Wheat-free is not gluten-free: that claim wants less than 20 ppm of gluten, and none from rye, barley or their"
                    + " crosses either.",
            "21 CFR 101.91(a)(1) and (3)");

    /** By a word in the label name or the id: identity and limits of use in the two laws. */
    private static final Map<String, Caution> ADDITIVES = Map.ofEntries(
            Map.entry(
                    "hydroxypropyl methylcellulose",
                    new Caution(
                            "hydroxypropyl methylcellulose: a direct additive under good manufacturing practice; E 464,"
                                    + " as much as needed.",
                            "21 CFR 172.874; Regulation (EC) 1333/2008, Annex II (both from memory)")),
            Map.entry(
                    "methylcellulose",
                    new Caution(
                            "methylcellulose: of the pharmacopoeia's grade, 27.5 to 31.5 % methoxy when dry, under good"
                                    + " manufacturing practice; E 461, as much as needed.",
                            "21 CFR 182.1480; Regulation (EC) 1333/2008, Annex II (from memory)")),
            Map.entry(
                    "carrageenan",
                    new Caution(
                            "carrageenan: no more than does the work; E 407, as much as needed.",
                            "21 CFR 172.620; Regulation (EC) 1333/2008, Annex II (both from memory)")),
            Map.entry(
                    "konjac",
                    new Caution(
                            "konjac: in the Union E 425, 10 g/kg of the food at most, never in jelly sweets.",
                            "Regulation (EC) 1333/2008, Annex II (from memory)")),
            Map.entry(
                    "beet",
                    new Caution(
                            "beet as a colour: listed without certification, lead at most 10 ppm, arsenic and mercury 1"
                                    + " ppm; any colour added is \"artificial color\" to the law, so say \"colored with"
                                    + " beet\" and the like. E 162 in the Union where colours are allowed.",
                            "21 CFR 73.40 and 101.22(a)(4), (k)(2)")),
            Map.entry(
                    "smoke",
                    new Caution(
                            "smoke flavour: off the Union's list, with use ending on 1 July 2026 for most foods.",
                            "Regulation (EU) 2024/2067")),
            Map.entry(
                    "potassium chloride",
                    new Caution(
                            "potassium chloride: harmful to some people with weak kidneys; the name must stay on the"
                                    + " label.",
                            "21 CFR 184.1622 (from memory)")));

    private Cautions() {}

    static List<Caution> of(Brief brief, Blend blend, Allergens allergens) {
        var cautions = new LinkedHashSet<Caution>();
        cautions.add(DRAFT);
        cautions.addAll(COMMON);
        if (allergens.format() == Format.US
                && allergens.named().stream().noneMatch(each -> each.name().equals("wheat"))) {
            cautions.add(GLUTEN);
        }
        if (!allergens.unknownFor().isEmpty()) {
            cautions.add(new Caution(
                    "Allergens are not known for " + String.join(", ", allergens.unknownFor())
                            + ": the list above is not complete.",
                    "the ingredient set"));
        }
        Amount.shares(brief, blend).keySet().forEach(ingredient -> cautions.addAll(additive(ingredient)));
        return List.copyOf(cautions);
    }

    /** The caution for an ingredient: that of the longest word that fits. */
    private static List<Caution> additive(Ingredient ingredient) {
        var name = (ingredient.label() + " " + ingredient.name()).toLowerCase(Locale.ROOT);
        var words = new ArrayList<String>();
        ADDITIVES.keySet().stream().filter(name::contains).sorted().forEach(words::add);
        words.sort((a, b) -> b.length() - a.length());
        return words.stream().limit(1).map(Cautions::known).toList();
    }

    private static Caution known(String word) {
        return ADDITIVES.getOrDefault(word, DRAFT);
    }
}
