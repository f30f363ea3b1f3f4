/** The manual: pages written in Markdown, as words for a terminal and as parts of one page for a browser. */
@NullMarked
package panade.manual;

import org.jspecify.annotations.NullMarked;
