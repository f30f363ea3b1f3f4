/** A bench sheet: the blend in whole steps of a scale, judged against the brief. */
@NullMarked
package panade.bench;

import org.jspecify.annotations.NullMarked;
