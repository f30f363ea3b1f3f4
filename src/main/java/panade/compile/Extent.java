package panade.compile;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.LinearForm;

/** How little and how much of something there can be, rules aside. */
public interface Extent {
    /** Extents that are true of any share and cost nothing to find. */
    Extent ANY = new Extent() {
        @Override
        public BigFraction least(LinearForm form) {
            return BigFraction.ZERO;
        }

        @Override
        public BigFraction most(LinearForm form) {
            return BigFraction.ONE;
        }
    };

    /** The least that a form over the columns can be, or anything below it. */
    BigFraction least(LinearForm form);

    /** The most that a form over the columns can be, or anything above it. */
    BigFraction most(LinearForm form);
}
