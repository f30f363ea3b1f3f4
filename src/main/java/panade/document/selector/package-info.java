/** Reads what a bound or rule measures: names, categories, exclusions and ceilings, resolved to ids. */
@NullMarked
package panade.document.selector;

import org.jspecify.annotations.NullMarked;
