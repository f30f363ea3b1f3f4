/** Makes the results of the commands from what was found, one class for each command. */
@NullMarked
package panade.assemble;

import org.jspecify.annotations.NullMarked;
