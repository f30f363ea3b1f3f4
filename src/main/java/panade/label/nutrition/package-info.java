/** The amounts on a label: nutrients, energy, rounding and daily values of each law, protein quality. */
@NullMarked
package panade.label.nutrition;

import org.jspecify.annotations.NullMarked;
