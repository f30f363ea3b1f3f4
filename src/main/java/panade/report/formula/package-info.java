/** Words what changing a formula comes to. */
@NullMarked
package panade.report.formula;

import org.jspecify.annotations.NullMarked;
