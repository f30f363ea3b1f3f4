/** Takes other people's tables into our documents, and shows what that changes before anything is written. */
@NullMarked
package panade.intake;

import org.jspecify.annotations.NullMarked;
