/** Words what is weighed, what its label says, and how both fare when prices and contents vary. */
@NullMarked
package panade.report.plate;

import org.jspecify.annotations.NullMarked;
