/** What is bought, in which packs, for which products and periods. */
@NullMarked
package panade.domain.purchase;

import org.jspecify.annotations.NullMarked;
