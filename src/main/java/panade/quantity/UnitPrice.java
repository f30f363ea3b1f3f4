package panade.quantity;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Prices per weight as people write them. */
public final class UnitPrice {
    private UnitPrice() {}

    /**
     * The same of a text that may bear the sign or code of the currency that prices are in, such as {@code $3.90/lb}.
     *
     * @param currency its code; empty where nothing states it, and then no sign is clear
     */
    public static Optional<BigFraction> perKg(String text, String currency) {
        int slash = text.indexOf('/');
        return slash < 0
                ? Optional.empty()
                : CurrencySigns.without(text.substring(0, slash), currency)
                        .flatMap(money -> perKg(money + text.substring(slash)));
    }

    /** Money per kilogram of a text such as {@code 3.90/lb} or {@code 127/5 kg}; empty when it is not one. */
    public static Optional<BigFraction> perKg(String text) {
        int slash = text.indexOf('/');
        if (slash < 0) {
            return Optional.empty();
        }
        var money = Decimal.parse(text.substring(0, slash).strip());
        var weight = kilograms(text.substring(slash + 1).strip());
        return money.flatMap(number -> weight.map(number::divide));
    }

    /** A weight to sell by: a unit alone, or a number of it above zero. */
    private static Optional<BigFraction> kilograms(String text) {
        var named = Unit.find(text)
                .filter(unit -> unit.dimension() == Dimension.MASS)
                .map(Unit::factor);
        return named.or(() -> Quantity.parse(text)
                .filter(amount -> amount.unit().dimension() == Dimension.MASS)
                .map(Quantity::base)
                .filter(base -> base.signum() > 0));
    }
}
