/** Words what a question beside the recipe comes to: swaps, price lists, curves, targets, orders, imports. */
@NullMarked
package panade.report.question;

import org.jspecify.annotations.NullMarked;
