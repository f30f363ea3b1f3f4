/** Spreadsheets as values, and the port to whatever reads and writes the files. */
@NullMarked
package panade.sheet;

import org.jspecify.annotations.NullMarked;
