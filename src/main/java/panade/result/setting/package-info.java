/** What a try of numbers moves. */
@NullMarked
package panade.result.setting;

import org.jspecify.annotations.NullMarked;
