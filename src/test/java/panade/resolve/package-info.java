/**
 * Every printed figure solved again from the documents, by a reading and a simplex that share nothing with the program.
 */
@NullMarked
package panade.resolve;

import org.jspecify.annotations.NullMarked;
