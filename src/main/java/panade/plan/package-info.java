/** Runs the line once: a brief in, one outcome out. */
@NullMarked
package panade.plan;

import org.jspecify.annotations.NullMarked;
