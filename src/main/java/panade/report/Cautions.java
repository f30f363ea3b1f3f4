package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import panade.domain.Blend;
import panade.domain.Brief;

/** The usual cautions; local codes and licensed practice decide. */
public final class Cautions {
    private Cautions() {}

    /** What to mind about a blend. */
    public static List<String> of(Brief brief, Blend blend) {
        var cautions = new ArrayList<>(brief.notes());
        cautions.add(allergens(brief, blend));
        cautions.add(
                "Keep the mix cold: 41 F (5 C) or below, used within 7 days of making, or frozen (FDA Food Code 2022,"
                        + " 3-501.16 and 3-501.17). This is not a shelf-life study.");
        cautions.add("Use limits, label and safety: this is arithmetic on the values you gave. Local codes and a"
                + " licensed reviewer decide.");
        return cautions;
    }

    /** The same for whoever stands at the bench. */
    public static List<String> atTheBench(Brief brief, Blend blend) {
        return List.of(
                allergens(brief, blend) + " Wash hands, bowls and scoops between products.",
                "Keep cold: 41 F (5 C) or below. Use by ____________ (made + 6 days, the day of making counts as the"
                        + " first of 7) or freeze (FDA Food Code 2022, 3-501.17).",
                "Note lots and real weights as you go. Local codes and your own plan decide.");
    }

    /** What to mind before a brief is changed so that a blend becomes possible. */
    public static List<String> ofChanges() {
        return List.of(
                "A change that lets in what was kept out may bring an allergen. Ask whoever asked for it to be kept out"
                        + " before you make any.",
                "A number that was eased may have been there for safety, for the label or for a customer. Local codes and"
                        + " a licensed reviewer decide.");
    }

    private static String allergens(Brief brief, Blend blend) {
        var contained = new TreeSet<String>();
        var unknown = new TreeSet<String>();
        for (var line : blend.lines()) {
            var ingredient = brief.set().ingredient(line.use().ingredient());
            var allergens = ingredient.allergens();
            if (allergens == null) {
                unknown.add(ingredient.name());
            } else {
                contained.addAll(allergens);
            }
        }
        var words = contained.isEmpty()
                ? "Allergens: none stated, which is not the same as none in it"
                : "Allergens: " + String.join(", ", contained);
        return unknown.isEmpty()
                ? words + ". Mind cross-contact."
                : words + "; not known for " + String.join(", ", unknown) + ". Mind cross-contact.";
    }
}
