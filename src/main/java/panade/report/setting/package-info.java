/** Words what a try of numbers moves. */
@NullMarked
package panade.report.setting;

import org.jspecify.annotations.NullMarked;
