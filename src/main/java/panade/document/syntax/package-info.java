/** The syntax of a JSON or CSV document with the place of every value, and the list of what is wrong in it. */
@NullMarked
package panade.document.syntax;

import org.jspecify.annotations.NullMarked;
