/** What commands on trials answer. */
@NullMarked
package panade.result.trial;

import org.jspecify.annotations.NullMarked;
