/** Values that are worked out when somebody asks for them. */
@NullMarked
package panade.lazy;

import org.jspecify.annotations.NullMarked;
