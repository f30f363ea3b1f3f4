/** Reads what to buy: products, periods, packs and stores. */
@NullMarked
package panade.document.purchase;

import org.jspecify.annotations.NullMarked;
