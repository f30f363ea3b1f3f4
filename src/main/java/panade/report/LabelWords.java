package panade.report;

import java.util.ArrayList;
import java.util.List;
import panade.label.LabelChange;

/** Words what a change does to the label. */
final class LabelWords {
    private LabelWords() {}

    /** In one sentence without a full stop; allergens are left to others who tell them anyway. */
    static String names(LabelChange change) {
        if (change.keepsNames()) {
            return "the same names in the same order";
        }
        var words = new ArrayList<String>();
        add(words, "new on it ", change.added());
        add(words, "gone from it ", change.gone());
        if (change.reordered()) {
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
    static String allergens(LabelChange change) {
        if (change.keepsAllergens()) {
            return "allergens stay";
        }
        var words = new ArrayList<String>();
        add(words, "allergens added ", change.allergensAdded());
        add(words, "allergens gone ", change.allergensGone());
        add(words, "allergens not known for ", change.allergensNotKnown());
        return String.join("; ", words);
    }

    /** The panel in one sentence without a full stop, as rounded for the United States. */
    static String panel(LabelChange change) {
        return change.figures().isEmpty()
                ? "the rounded panel stays"
                : "panel (as rounded in the United States) "
                        + String.join(
                                ", ",
                                change.figures().stream()
                                        .map(figure -> figure.name() + " " + figure.before() + " to " + figure.after())
                                        .toList());
    }

    /** All of it, without a full stop. */
    static String all(LabelChange change) {
        return names(change) + "; " + allergens(change) + "; " + panel(change);
    }
}
