package panade.result;

import java.util.List;

/**
 * What a change of the blend does to its label.
 *
 * @param names what comes onto the list of ingredients and leaves it
 * @param panel lines of the panel that print something else
 */
public record LabelChangeResult(Names names, Allergens allergens, List<Figure> panel) {
    public LabelChangeResult {
        panel = List.copyOf(panel);
    }

    /** Names that come and go, and whether those that stay change their order. */
    public record Names(List<String> added, List<String> gone, boolean reordered) {
        public Names {
            added = List.copyOf(added);
            gone = List.copyOf(gone);
        }

        /** Whether the names and their order stay. */
        public boolean stay() {
            return added.isEmpty() && gone.isEmpty() && !reordered;
        }
    }

    /**
     * Allergens that must be named now, or not any more.
     *
     * @param notKnown ingredients new with the change of which nobody can tell what they carry
     */
    public record Allergens(List<String> added, List<String> gone, List<String> notKnown) {
        public Allergens {
            added = List.copyOf(added);
            gone = List.copyOf(gone);
            notKnown = List.copyOf(notKnown);
        }

        /** Whether the same allergens are named, and none may hide in what nobody states. */
        public boolean stay() {
            return added.isEmpty() && gone.isEmpty() && notKnown.isEmpty();
        }
    }

    /** A line as it was printed and as it is. */
    public record Figure(String id, String name, String before, String after) {}
}
