/** What changing a formula little by little, or in a few places, comes to: the least cost over weight moved. */
@NullMarked
package panade.nudge;

import org.jspecify.annotations.NullMarked;
