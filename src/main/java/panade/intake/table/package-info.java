/** Tables of any delimiter, encoding and heading, with the place of each cell. */
@NullMarked
package panade.intake.table;

import org.jspecify.annotations.NullMarked;
