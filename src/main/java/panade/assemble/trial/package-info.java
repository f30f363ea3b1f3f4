/** Makes the results of commands on trials and tastings. */
@NullMarked
package panade.assemble.trial;

import org.jspecify.annotations.NullMarked;
