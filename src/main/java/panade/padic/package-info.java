/** Exact solution of square systems in whole numbers by p-adic lifting; it has never heard of linear programs. */
@NullMarked
package panade.padic;

import org.jspecify.annotations.NullMarked;
