/** What trials teach: linear models fitted in exact fractions, and the checks on them. It has never heard of food. */
@NullMarked
package panade.learn;

import org.jspecify.annotations.NullMarked;
