/** Tables of food composition as ingredients. */
@NullMarked
package panade.intake.food;

import org.jspecify.annotations.NullMarked;
