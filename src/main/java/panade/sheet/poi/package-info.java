/** The only code that knows Apache POI. */
@NullMarked
package panade.sheet.poi;

import org.jspecify.annotations.NullMarked;
