/** Words what trials teach. */
@NullMarked
package panade.report.trial;

import org.jspecify.annotations.NullMarked;
