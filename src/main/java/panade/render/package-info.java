/** Lays a report out as plain text. */
@NullMarked
package panade.render;

import org.jspecify.annotations.NullMarked;
