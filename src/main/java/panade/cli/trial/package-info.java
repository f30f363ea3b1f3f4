/** The commands on trials. */
@NullMarked
package panade.cli.trial;

import org.jspecify.annotations.NullMarked;
