/** The words of the trade as values: ingredients, offers, bounds, briefs and blends. */
@NullMarked
package panade.domain;

import org.jspecify.annotations.NullMarked;
