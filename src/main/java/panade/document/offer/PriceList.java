package panade.document.offer;

import java.util.List;
import java.util.Optional;
import panade.domain.purchase.Offer;

/** The offers of one file, and the currency they are in where it says so. */
public record PriceList(List<Offer> offers, Optional<String> currency) {
    public PriceList {
        offers = List.copyOf(offers);
    }
}
