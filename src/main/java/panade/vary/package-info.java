/** How the least cost and the blend vary when prices or compositions are drawn at random. */
@NullMarked
package panade.vary;

import org.jspecify.annotations.NullMarked;
