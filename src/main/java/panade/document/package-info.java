/** Reads files into domain values, or into the complete list of what is wrong with them. */
@NullMarked
package panade.document;

import org.jspecify.annotations.NullMarked;
