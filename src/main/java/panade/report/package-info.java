/** Words: results become a tree of headings, tables and notes. */
@NullMarked
package panade.report;

import org.jspecify.annotations.NullMarked;
