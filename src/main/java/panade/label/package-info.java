/** What a label says of a blend, by published rules: amounts, rounding, names, allergens, protein quality. */
@NullMarked
package panade.label;

import org.jspecify.annotations.NullMarked;
