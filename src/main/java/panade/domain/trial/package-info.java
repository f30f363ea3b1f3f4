/** What a cook mixed on trial and measured on it. */
@NullMarked
package panade.domain.trial;

import org.jspecify.annotations.NullMarked;
