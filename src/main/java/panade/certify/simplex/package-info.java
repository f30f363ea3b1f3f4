/** The simplex method in whole numbers over one common denominator. */
@NullMarked
package panade.certify.simplex;

import org.jspecify.annotations.NullMarked;
