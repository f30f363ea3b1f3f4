/** The page that a brief is worked on: the same look as the report's, with fields in it. */
@NullMarked
package panade.page.open;

import org.jspecify.annotations.NullMarked;
