/** The command line: parses, wires, prints and maps outcomes to exit codes. */
@NullMarked
package panade.cli;

import org.jspecify.annotations.NullMarked;
