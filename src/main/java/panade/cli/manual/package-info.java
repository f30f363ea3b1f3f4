/** The command that shows the manual. */
@NullMarked
package panade.cli.manual;

import org.jspecify.annotations.NullMarked;
