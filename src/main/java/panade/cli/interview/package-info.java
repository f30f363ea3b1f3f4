/** The questions of {@code panade new}: asked in order, answered, taken back and resumed. */
@NullMarked
package panade.cli.interview;

import org.jspecify.annotations.NullMarked;
