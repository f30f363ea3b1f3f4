@NullMarked
package panade.nudge;

import org.jspecify.annotations.NullMarked;
