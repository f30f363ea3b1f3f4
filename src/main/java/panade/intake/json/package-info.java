/** Edits of a JSON text that leave comments, order and spacing alone, and the merge of two ingredient sets. */
@NullMarked
package panade.intake.json;

import org.jspecify.annotations.NullMarked;
