package panade.report.question;

import java.util.ArrayList;
import java.util.List;
import panade.result.LabelChangeResult;

/** Words what a change does to the label. */
public final class LabelWords {
    private LabelWords() {}

    /** In one sentence without a full stop; allergens are left to others who tell them anyway. */
    static String names(LabelChangeResult change) {
        if (change.names().stay()) {
            return "the same names in the same order";
        }
        var words = new ArrayList<String>();
        add(words, "new on it ", change.names().added());
        add(words, "gone from it ", change.names().gone());
        if (change.names().reordered()) {
            words.add(words.isEmpty() ? "the names change their order" : "the others change their order");
        }
        return String.join("; ", words);
    }

    private static void add(List<String> words, String what, List<String> names) {
        if (!names.isEmpty()) {
            words.add(what + String.join(", ", names));
        }
    }

    /** Allergens in one sentence without a full stop. */
    static String allergens(LabelChangeResult change) {
        if (change.allergens().stay()) {
            return "allergens stay";
        }
        var words = new ArrayList<String>();
        add(words, "allergens added ", change.allergens().added());
        add(words, "allergens gone ", change.allergens().gone());
        add(words, "allergens not known for ", change.allergens().notKnown());
        return String.join("; ", words);
    }

    /** The panel in one sentence without a full stop, as rounded for the United States. */
    static String panel(LabelChangeResult change) {
        return change.panel().isEmpty()
                ? "the rounded panel stays"
                : "panel (as rounded in the United States) "
                        + String.join(
                                ", ",
                                change.panel().stream()
                                        .map(figure -> figure.name() + " " + figure.before() + " to " + figure.after())
                                        .toList());
    }

    /** All of it, without a full stop. */
    public static String all(LabelChangeResult change) {
        return names(change) + "; " + allergens(change) + "; " + panel(change);
    }
}
