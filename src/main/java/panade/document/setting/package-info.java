/** Numbers tried in place of what the documents say. */
@NullMarked
package panade.document.setting;

import org.jspecify.annotations.NullMarked;
