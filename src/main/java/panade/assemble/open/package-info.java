/** Makes what the page to work on tells beside the blend. */
@NullMarked
package panade.assemble.open;

import org.jspecify.annotations.NullMarked;
