/** Which trials to make. It has never heard of food. */
@NullMarked
package panade.design;

import org.jspecify.annotations.NullMarked;
