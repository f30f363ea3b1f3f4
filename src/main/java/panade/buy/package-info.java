/** Plans what to order, in whole packs, for one or several products from one store room. */
@NullMarked
package panade.buy;

import org.jspecify.annotations.NullMarked;
