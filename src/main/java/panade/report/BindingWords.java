package panade.report;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.explain.Explanation.Touch;
import panade.quantity.Decimal;

/** Says what a binding bound costs, in a step that a cook would try. */
final class BindingWords {
    private static final BigFraction TENTH_OF_A_CENT_PER_100 = BigFraction.of(1, 100_000);

    private final String currency;

    BindingWords(String currency) {
        this.currency = currency;
    }

    /** One sentence for each binding bound, dearest first. */
    List<String> points(List<Limit> limits) {
        var priced = new ArrayList<Limit>();
        limits.stream().filter(limit -> limit.touch() != Touch.NONE).forEach(priced::add);
        priced.sort((a, b) -> weight(b).compareTo(weight(a)));
        return priced.stream().map(this::sentence).toList();
    }

    private static BigFraction weight(Limit limit) {
        var step = step(limit);
        return largest(limit.price()).multiply(step);
    }

    private static BigFraction largest(@Nullable ShadowPrice price) {
        if (price == null) {
            return BigFraction.ZERO;
        }
        var raised = price.whenRaised() == null
                ? BigFraction.ZERO
                : price.whenRaised().abs();
        var lowered = price.whenLowered() == null
                ? BigFraction.ZERO
                : price.whenLowered().abs();
        return raised.compareTo(lowered) > 0 ? raised : lowered;
    }

    private String sentence(Limit limit) {
        var side = limit.touch() == Touch.MIN ? "at its least" : limit.touch() == Touch.MAX ? "at its most" : "fixed";
        return limit.name() + " (" + side + ", " + at(limit) + "): " + effect(limit);
    }

    private static String at(Limit limit) {
        var number = limit.touch() == Touch.MIN ? limit.min() : limit.max();
        return number == null ? "" : Figures.with(number, limit.unit());
    }

    private String effect(Limit limit) {
        var price = limit.price();
        if (price == null) {
            return "";
        }
        var step = step(limit);
        var stepWords = Figures.with(step, limit.unit());
        return half("raising it by " + stepWords, price.whenRaised(), step) + "; "
                + half("lowering it by " + stepWords, price.whenLowered(), step) + ".";
    }

    private String half(String move, @Nullable BigFraction rate, BigFraction step) {
        if (rate == null) {
            return move + " leaves no blend";
        }
        var change = Figures.perPound(rate.multiply(step));
        if (change.abs().compareTo(TENTH_OF_A_CENT_PER_100) < 0) {
            return move + " changes nothing";
        }
        var amount = Figures.significant(change.abs(), 2) + (currency.isEmpty() ? "" : " " + currency) + "/lb";
        return move + (change.signum() > 0 ? " costs " : " saves ") + amount;
    }

    /** A round step of about a twentieth of the number: 1, 2 or 5 times a power of ten; 0.1 of the unit at zero. */
    static BigFraction step(Limit limit) {
        var number = limit.touch() == Touch.MIN ? limit.min() : limit.max();
        if (number == null || number.signum() == 0) {
            return BigFraction.of(1, 10);
        }
        var wanted = number.abs().divide(20);
        var leading = Decimal.significant(wanted, 1);
        var power = new BigDecimal(BigInteger.ONE, leading.scale() - (leading.precision() - 1));
        int digit = leading.unscaledValue().intValue();
        while (digit >= 10) {
            digit /= 10;
        }
        return Decimal.of(power).multiply(digit >= 5 ? 5 : digit >= 2 ? 2 : 1);
    }
}
