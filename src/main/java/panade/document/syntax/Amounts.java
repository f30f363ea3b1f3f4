package panade.document.syntax;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.TextNode;
import panade.domain.purchase.TargetPrice;
import panade.quantity.CurrencySigns;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.UnitPrice;

/** Reads weights, shares, prices and counts that stand on their own, and tells what is wrong with them. */
public record Amounts(Expect expect, String currency) {
    /** More than anybody counts of ingredients, names or periods; a larger number is a slip. */
    private static final int MOST_COUNTED = 1_000_000;

    private static final String PRICE = "a price per weight, such as \"3.90/lb\" or \"8.60/kg\"";

    /** A reader that knows the currency of all prices; empty when nothing states it. */
    public Amounts(Problems problems, String currency) {
        this(new Expect(problems), currency);
    }

    /** A reader of amounts that are no prices. */
    public Amounts(Problems problems) {
        this(problems, "");
    }

    /** A weight above zero. */
    public Optional<Quantity> weight(Node node, String example) {
        var expected = "a weight above zero, such as \"" + example + "\"";
        return quantity(node, Dimension.MASS, expected)
                .filter(weight -> weight.base().signum() > 0 || told(node, "is no weight to work with", expected));
    }

    /** A share from 0 % to 100 %. */
    public Optional<Quantity> share(Node node, String example) {
        var expected = "a share from 0 % to 100 %, such as \"" + example + "\"";
        return quantity(node, Dimension.SHARE, expected)
                .filter(share -> isWithinTheWhole(share) || told(node, "is outside 0 % to 100 %", expected));
    }

    /** A price per weight, not negative. */
    public Optional<TargetPrice> price(Node node) {
        if (!(node instanceof TextNode text)) {
            return expect.refuse(node, PRICE);
        }
        if (text.text().indexOf('/') < 0) {
            told(node, "does not say for which weight", PRICE);
            return Optional.empty();
        }
        var perKg = UnitPrice.perKg(text.text(), currency);
        if (perKg.isEmpty()) {
            tellNoPrice(text);
        }
        return perKg.filter(price -> price.signum() >= 0 || told(node, "is a negative price", PRICE))
                .map(price -> new TargetPrice(price, text.text()));
    }

    private void tellNoPrice(TextNode text) {
        var sign = CurrencySigns.in(text.text().substring(0, text.text().indexOf('/')));
        boolean unclear = UnitPrice.perKg(text.text().replace(sign, "")).isPresent();
        if (!sign.isEmpty() && unclear) {
            // the number without its sign is no advice here: it would be another price
            var prices = currency.isEmpty() ? "nothing says which currency prices are in" : "prices are in " + currency;
            expect.problems()
                    .add(
                            text.origin(),
                            "\"" + text.text() + "\" bears \"" + sign + "\", and " + prices,
                            "Expected " + PRICE + ".");
        } else {
            told(text, "is not a price per weight", PRICE);
        }
    }

    /** A bare number, not negative. */
    public Optional<BigFraction> notNegative(Node node, String expected) {
        return expect.number(node, expected)
                .map(NumberNode::value)
                .filter(value -> value.signum() >= 0 || told(node, "is below zero", expected));
    }

    /** A whole number, neither below the least nor of a size that nobody counts to. */
    public Optional<BigFraction> count(Node node, int least) {
        var expected = "a whole number, " + least + " to " + MOST_COUNTED;
        return expect.number(node, expected)
                .map(NumberNode::value)
                .filter(value -> isCount(value, least) || told(node, "is not a number to count with", expected));
    }

    private static boolean isCount(BigFraction value, int least) {
        return isWhole(value)
                && value.subtract(least).signum() >= 0
                && value.subtract(MOST_COUNTED).signum() <= 0;
    }

    /** Whether a number is whole. */
    public static boolean isWhole(BigFraction value) {
        return value.getDenominator().abs().bitLength() == 1;
    }

    /** Whether a share lies from nothing to everything. */
    public static boolean isWithinTheWhole(Quantity share) {
        return share.base().signum() >= 0 && share.base().compareTo(BigFraction.ONE) <= 0;
    }

    private Optional<Quantity> quantity(Node node, Dimension dimension, String expected) {
        if (!(node instanceof TextNode text)) {
            return node instanceof NumberNode ? noUnit(node, expected) : expect.refuse(node, expected);
        }
        var quantity = Quantity.parse(text.text());
        if (quantity.isEmpty()) {
            told(node, "is not a number with a unit that is known here", expected);
            return Optional.empty();
        }
        return quantity.filter(found -> found.unit().dimension() == dimension || toldKind(node, found, expected));
    }

    private boolean toldKind(Node node, Quantity found, String expected) {
        boolean bare = found.unit().dimension() == Dimension.NUMBER;
        return told(
                node, bare ? "has no unit" : "is " + found.unit().dimension().words(), expected);
    }

    private Optional<Quantity> noUnit(Node node, String expected) {
        told(node, "has no unit", expected);
        return Optional.empty();
    }

    // False, so that a filter can tell and drop at once.
    private boolean told(Node node, String what, String expected) {
        var spelling = Expect.spelling(node);
        expect.problems()
                .addSpelt(node.origin(), "\"" + spelling + "\" " + what, "Expected " + expected + ".", spelling);
        return false;
    }
}
