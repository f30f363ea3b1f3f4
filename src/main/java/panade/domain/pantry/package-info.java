/** Ingredients and what is known of them: properties, label marks, stages. */
@NullMarked
package panade.domain.pantry;

import org.jspecify.annotations.NullMarked;
