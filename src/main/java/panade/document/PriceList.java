package panade.document;

import java.util.List;
import java.util.Optional;
import panade.domain.Offer;

/** The offers of one file, and the currency they are in where it says so. */
record PriceList(List<Offer> offers, Optional<String> currency) {
    PriceList {
        offers = List.copyOf(offers);
    }
}
