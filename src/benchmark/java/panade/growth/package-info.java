/** Kitchens of any size, written as documents, for measuring whole commands. */
@NullMarked
package panade.growth;

import org.jspecify.annotations.NullMarked;
