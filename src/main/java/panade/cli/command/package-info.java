/** The commands: each its options and one call. */
@NullMarked
package panade.cli.command;

import org.jspecify.annotations.NullMarked;
