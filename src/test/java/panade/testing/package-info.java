/** What tests of several packages share. */
@NullMarked
package panade.testing;

import org.jspecify.annotations.NullMarked;
