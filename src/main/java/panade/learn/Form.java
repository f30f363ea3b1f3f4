package panade.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** How far a response may bend over its levers (Scheffe 1958 for levers that are all the shares of a mixture). */
public enum Form {
    LINEAR("linear"),
    QUADRATIC("quadratic"),
    SPECIAL_CUBIC("special cubic");

    private final String words;

    Form(String words) {
        this.words = words;
    }

    /** What documents and results call it. */
    public String words() {
        return words;
    }

    /** The form of that name. */
    public static Optional<Form> named(String words) {
        return List.of(values()).stream()
                .filter(form -> form.words.equals(words))
                .findFirst();
    }

    /** The next that bends further. */
    public Optional<Form> next() {
        return switch (this) {
            case LINEAR -> Optional.of(QUADRATIC);
            case QUADRATIC -> Optional.of(SPECIAL_CUBIC);
            case SPECIAL_CUBIC -> Optional.empty();
        };
    }

    /**
     * The terms of a model.
     *
     * @param levers how many there are
     * @param squared those whose square counts: not the shares of a whole, where a square follows from the products
     */
    public List<Term> terms(int levers, boolean constant, Set<Integer> squared) {
        var terms = new ArrayList<Term>();
        if (constant) {
            terms.add(Term.of());
        }
        for (int i = 0; i < levers; i++) {
            terms.add(Term.of(i));
        }
        if (this != LINEAR) {
            addProducts(terms, levers, squared);
        }
        if (this == SPECIAL_CUBIC) {
            addTriples(terms, levers);
        }
        return terms;
    }

    private static void addProducts(List<Term> terms, int levers, Set<Integer> squared) {
        for (int i = 0; i < levers; i++) {
            for (int j = i; j < levers; j++) {
                if (i != j || squared.contains(i)) {
                    terms.add(Term.of(i, j));
                }
            }
        }
    }

    private static void addTriples(List<Term> terms, int levers) {
        for (int i = 0; i < levers; i++) {
            for (int j = i + 1; j < levers; j++) {
                for (int k = j + 1; k < levers; k++) {
                    terms.add(Term.of(i, j, k));
                }
            }
        }
    }
}
