/**
 * What the commands answer: a tree of records that hold nothing but values, with all that any reader may show worked
 * out. Components are named and ordered as in the JSON; what only other readers need is marked as left out of it.
 */
@NullMarked
package panade.result;

import org.jspecify.annotations.NullMarked;
