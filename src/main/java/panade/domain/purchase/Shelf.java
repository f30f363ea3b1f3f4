package panade.domain.purchase;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a product sells for, and who keeps which part of it.
 *
 * @param price on the shelf
 * @param margins fractions of the selling price that each keeps in turn, from the shop inwards
 */
public record Shelf(TargetPrice price, List<BigFraction> margins) {
    public Shelf {
        margins = List.copyOf(margins);
    }
}
