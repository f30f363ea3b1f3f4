package panade.report;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The usual cautions; local codes and licensed practice decide. */
public final class Cautions {
    private static final String COLD =
            "Cold: soak in cold water (spores of Bacillus cereus survive extrusion), and have the"
                    + " mix at 41 F (5 C) or below within 4 hours, as food made from ingredients at room temperature (FDA Food Code"
                    + " 2022, 3-501.14(B) and 3-501.16).";

    private static final String TIME =
            "Time: at most 7 days, the day of making counted as the first; fewer unless a laboratory"
                    + " says more; never later than the oldest ingredient's own date; or freeze. The 7 days are a ceiling for"
                    + " ready-to-eat food held over 24 hours (3-501.17), and this is raw. Who packs for other shops falls under 21 CFR"
                    + " 117; film and vacuum packs in a kitchen under 3-502.12. This is not a shelf-life study.";

    private Cautions() {}

    /**
     * What to mind about all that is made.
     *
     * @param notes the briefs' own
     * @param allergens stated of anything that is used
     * @param notKnown names of ingredients of which none are stated
     */
    public static List<String> of(List<String> notes, Collection<String> allergens, Collection<String> notKnown) {
        var cautions = new ArrayList<>(notes);
        cautions.add(allergens(allergens, notKnown));
        cautions.add(COLD);
        cautions.add(TIME);
        cautions.add("Use limits, label and safety: this is arithmetic on the values you gave. Local codes and a"
                + " licensed reviewer decide.");
        return cautions;
    }

    /** The same for whoever stands at the bench. */
    public static List<String> atTheBench(Collection<String> allergens, Collection<String> notKnown) {
        return List.of(
                allergens(allergens, notKnown) + " Wash hands, bowls and scoops between products.",
                "Keep cold: soak in cold water, and at 41 F (5 C) or below within 4 hours of mixing. Use by ____________, at"
                        + " most made + 6 days (the day of making counts as the first of 7), fewer unless a laboratory says"
                        + " more, never later than the oldest ingredient's own date; or freeze (FDA Food Code 2022,"
                        + " 3-501.14(B) and 3-501.17).",
                "Note lots and real weights as you go. Local codes and your own plan decide.");
    }

    /** The same before anybody tastes. */
    public static List<String> forTasters(Collection<String> allergens, Collection<String> notKnown) {
        return List.of(
                allergens(allergens, notKnown) + " Ask every taster before a cup is filled; who is not sure does not"
                        + " taste.",
                "Chill, cook and hold both as the kitchen does what it sells. Local codes and your own plan decide.");
    }

    /** What to mind before a brief is changed so that a blend becomes possible. */
    public static List<String> ofChanges() {
        return List.of(
                "A change that lets in what was kept out may bring an allergen. Ask whoever asked for it to be kept out"
                        + " before you make any.",
                "A number that was eased may have been there for safety, for the label or for a customer. Local codes and"
                        + " a licensed reviewer decide.");
    }

    private static String allergens(Collection<String> contained, Collection<String> unknown) {
        var words = contained.isEmpty()
                ? "Allergens: none stated, which is not the same as none in it"
                : "Allergens: " + String.join(", ", contained);
        return unknown.isEmpty()
                ? words + ". Mind cross-contact."
                : words + "; not known for " + String.join(", ", unknown) + ". Mind cross-contact.";
    }
}
