/** Makes what a try of numbers moves of what was found. */
@NullMarked
package panade.assemble.setting;

import org.jspecify.annotations.NullMarked;
