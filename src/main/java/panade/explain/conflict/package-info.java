/**
 * Why no blend meets a brief: the smallest set of bounds that exclude each other, and changes that were solved with.
 */
@NullMarked
package panade.explain.conflict;

import org.jspecify.annotations.NullMarked;
