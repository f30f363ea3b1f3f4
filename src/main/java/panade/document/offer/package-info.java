/** Reads price lists and stock into offers. */
@NullMarked
package panade.document.offer;

import org.jspecify.annotations.NullMarked;
