/**
 * What a brief says that its cook may not have meant, as far as the whole brief must be known, or solved, to see it.
 */
@NullMarked
package panade.remark;

import org.jspecify.annotations.NullMarked;
