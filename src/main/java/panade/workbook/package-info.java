/** Lays answers out as spreadsheets whose sums and products stay live. */
@NullMarked
package panade.workbook;

import org.jspecify.annotations.NullMarked;
