/** Suppliers' price tables as offers. */
@NullMarked
package panade.intake.price;

import org.jspecify.annotations.NullMarked;
