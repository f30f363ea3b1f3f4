/** The command that serves the page to work on. */
@NullMarked
package panade.cli.open;

import org.jspecify.annotations.NullMarked;
