/** The option that tries numbers, and answers told with what these move. */
@NullMarked
package panade.cli.setting;

import org.jspecify.annotations.NullMarked;
