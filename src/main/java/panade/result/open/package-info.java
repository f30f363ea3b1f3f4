/** What the page to work on answers beside the blend. */
@NullMarked
package panade.result.open;

import org.jspecify.annotations.NullMarked;
