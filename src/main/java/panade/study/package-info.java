/** Answers questions that need several runs of the line, as values. */
@NullMarked
package panade.study;

import org.jspecify.annotations.NullMarked;
