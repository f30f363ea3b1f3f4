/** A kitchen in one workbook: its sheets as the same values that documents are read from, and the other way round. */
@NullMarked
package panade.document.kitchen;

import org.jspecify.annotations.NullMarked;
