package panade.api;

import java.util.List;
import java.util.function.Function;

/** What came of reading documents. */
public sealed interface Opened {
    /** Nothing was wrong. */
    record Sound(Product product) implements Opened {}

    /**
     * Something was wrong, and nothing was calculated.
     *
     * @param faults each with its file, line, column and pointer, what is wrong, and what was expected; in the order of
     *     files and lines
     */
    record Faulty(List<String> faults) implements Opened {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }

    /** What each of the two cases comes to. */
    default <R> R fold(Function<Product, R> sound, Function<List<String>, R> faulty) {
        return this instanceof Sound found ? sound.apply(found.product()) : faulty.apply(((Faulty) this).faults());
    }

    /**
     * The product.
     *
     * @throws IllegalArgumentException with all faults as its message, where there are any
     */
    default Product orElseThrow() {
        return fold(product -> product, faults -> {
            throw new IllegalArgumentException(String.join(System.lineSeparator(), faults));
        });
    }
}
