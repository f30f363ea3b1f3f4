/** Words what came of a brief: the blend and its reasons, or why there is none. */
@NullMarked
package panade.report.blend;

import org.jspecify.annotations.NullMarked;
