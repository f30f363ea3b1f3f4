package panade.domain;

import java.util.List;
import java.util.Set;
import panade.domain.purchase.Offer;

/**
 * Something that keeps ingredients out of a blend, and what would come with them were it lifted.
 *
 * @param name what is kept out, as a cook would say it
 * @param path where a result points to: a JSON Pointer into the document, or the option that says so
 * @param ingredients ids that nothing else keeps out
 * @param offers offers for them; a price of zero when nobody sells them
 * @param ceilings ceilings on use that come with them
 * @param priced whether somebody sells all of them
 */
public record Exclusion(
        String name, String path, Set<String> ingredients, List<Offer> offers, List<Bound> ceilings, boolean priced) {}
