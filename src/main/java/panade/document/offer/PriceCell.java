package panade.document.offer;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.quantity.CurrencySigns;
import panade.quantity.Decimal;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/** A cell of a price list, taken for what its column says it is. */
public record PriceCell(String content, Origin origin, Problems problems) {
    private static final String PRICE = "Expected a decimal number with a point, such as 4.20.";
    private static final String CURRENCY =
            "Expected the currency in the brief, such as \"currency\": \"USD\", or a number alone.";
    private static final String PER = "Expected the weight the price is for, such as kg, lb or 20 kg.";
    private static final String AMOUNT = "Expected a weight, such as 25 kg, or nothing.";

    public boolean isBlank() {
        return content.isEmpty();
    }

    /**
     * A price that is not negative.
     *
     * @param currency that all prices are in; empty when nothing states it, and then no sign is clear
     */
    Optional<BigFraction> price(String currency) {
        if (isBlank()) {
            return refuse("The price is missing", PRICE);
        }
        var price = CurrencySigns.without(content, currency).flatMap(Decimal::parse);
        if (price.isEmpty()) {
            return isOfOtherCurrency() ? refuseCurrency(currency) : refuse("\"" + content + "\" is not a price", PRICE);
        }
        return price.get().signum() < 0 ? refuse("\"" + content + "\" is a negative price", PRICE) : price;
    }

    private boolean isOfOtherCurrency() {
        var sign = CurrencySigns.in(content);
        return !sign.isEmpty()
                && Decimal.parse(content.replace(sign, "").strip()).isPresent();
    }

    /** The number without its sign is no advice here: it would be another price. */
    private <T> Optional<T> refuseCurrency(String currency) {
        var sign = "\"" + content + "\" bears a sign of money, and ";
        if (currency.isEmpty()) {
            problems.add(origin, sign + "nothing says which currency prices are in", CURRENCY);
        } else {
            problems.add(origin, sign + "prices are in " + currency, PRICE);
        }
        return Optional.empty();
    }

    /** The weight, in kilograms, that a price is for. */
    Optional<BigFraction> per() {
        if (isBlank()) {
            return refuse("The price is for no amount", PER);
        }
        var unit = Unit.find(content).filter(found -> found.dimension() == Dimension.MASS);
        if (unit.isPresent()) {
            return unit.map(Unit::factor);
        }
        var mass = mass().map(Quantity::base).filter(base -> base.signum() > 0);
        return mass.isPresent() ? mass : refuse("\"" + content + "\" is not a weight to sell by", PER);
    }

    /** A weight that is not negative; blank means not given. */
    Optional<Quantity> amount() {
        if (isBlank()) {
            return Optional.empty();
        }
        var mass = mass().filter(found -> found.base().signum() >= 0);
        return mass.isPresent() ? mass : refuse("\"" + content + "\" is not a weight", AMOUNT);
    }

    private Optional<Quantity> mass() {
        return Quantity.parse(content).filter(found -> found.unit().dimension() == Dimension.MASS);
    }

    public <T> Optional<T> refuse(String what, String advice) {
        problems.addSpelt(origin, what, advice, content);
        return Optional.empty();
    }
}
