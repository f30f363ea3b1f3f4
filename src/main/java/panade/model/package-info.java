/** A linear model in exact numbers that has never heard of food. */
@NullMarked
package panade.model;

import org.jspecify.annotations.NullMarked;
