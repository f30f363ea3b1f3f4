/** Serves pages to one browser on this machine and to nobody else; it has never heard of food. */
@NullMarked
package panade.serve;

import org.jspecify.annotations.NullMarked;
