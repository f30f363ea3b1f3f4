package panade.report;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.quantity.Decimal;

/** Says what a binding bound costs, in a round step that a cook would try. */
public final class BindingWords {
    /** Changes below a thousandth of a cent per kilogram are told as nothing. */
    private static final BigFraction NOTHING = BigFraction.of(1, 100_000);

    private final String currency;

    /** Words with that currency; empty for none. */
    public BindingWords(String currency) {
        this.currency = currency;
    }

    /** One sentence for each bound whose number moves the cost, dearest first; the others share the last one. */
    List<String> points(List<Limit> limits) {
        var touched = touched(limits);
        var points = new ArrayList<String>();
        touched.stream().filter(BindingWords::matters).map(this::sentence).forEach(points::add);
        var idle = touched.stream()
                .filter(limit -> !matters(limit))
                .map(Limit::name)
                .toList();
        if (!idle.isEmpty()) {
            points.add("Touched, but a small move either way changes nothing: " + String.join(", ", idle) + ".");
        }
        return points;
    }

    /** The bounds that the blend touches, dearest first. */
    public static List<Limit> touched(List<Limit> limits) {
        return limits.stream()
                .filter(limit -> limit.touch() != null)
                .sorted((a, b) -> weight(b).subtract(weight(a)).signum())
                .toList();
    }

    /** Whether a small move of the number is worth telling. */
    public static boolean matters(Limit limit) {
        var price = limit.price();
        boolean blocked = price != null && (price.whenRaised() == null || price.whenLowered() == null);
        return blocked || weight(limit).subtract(NOTHING).signum() >= 0;
    }

    private static BigFraction weight(Limit limit) {
        return largest(limit.price()).multiply(step(limit));
    }

    private static BigFraction largest(@Nullable ShadowPrice price) {
        if (price == null) {
            return BigFraction.ZERO;
        }
        var raised = size(price.whenRaised());
        var lowered = size(price.whenLowered());
        return raised.compareTo(lowered) > 0 ? raised : lowered;
    }

    private static BigFraction size(@Nullable BigFraction rate) {
        return rate == null ? BigFraction.ZERO : rate.abs();
    }

    private String sentence(Limit limit) {
        return limit.title() + ", " + side(limit.touch()) + at(limit) + ": " + effect(limit) + ".";
    }

    private static String side(@Nullable Side touch) {
        return touch == Side.MIN ? "at its least " : touch == Side.MAX ? "at its most " : "fixed at ";
    }

    private static String at(Limit limit) {
        var number = limit.touch() == Side.MIN ? limit.min() : limit.max();
        return number == null ? "" : Figures.with(number, limit.unit());
    }

    /** What a round step of the number does to the cost, either way; empty when the bound is idle. */
    public String effect(Limit limit) {
        var price = limit.price();
        if (price == null) {
            return "";
        }
        var step = step(limit);
        var words = Figures.with(step, limit.unit());
        var loosened = "each " + words + (limit.touch() == Side.MIN ? " less asked" : " more allowed");
        var tightened = "each " + words + (limit.touch() == Side.MIN ? " more asked" : " less allowed");
        boolean min = limit.touch() == Side.MIN;
        var easier = min ? price.whenLowered() : price.whenRaised();
        var harder = min ? price.whenRaised() : price.whenLowered();
        return isMirrored(easier, harder)
                ? half(loosened, easier, step)
                : half(loosened, easier, step) + "; " + half(tightened, harder, step);
    }

    private static boolean isMirrored(@Nullable BigFraction easier, @Nullable BigFraction harder) {
        return easier != null && harder != null && easier.negate().equals(harder);
    }

    private String half(String move, @Nullable BigFraction rate, BigFraction step) {
        if (rate == null) {
            return move + " leaves no blend";
        }
        var change = Figures.perPound(rate.multiply(step));
        if (change.signum() == 0) {
            return move + " changes nothing";
        }
        var amount = Figures.significant(change.abs(), 2) + (currency.isEmpty() ? "" : " " + currency) + "/lb";
        return move + (change.signum() > 0 ? " would cost " : " would save ") + amount;
    }

    /** The power of ten next below a twentieth of the number; a tenth of the unit at zero. */
    static BigFraction step(Limit limit) {
        var number = limit.touch() == Side.MIN ? limit.min() : limit.max();
        if (number == null || number.signum() == 0) {
            return BigFraction.of(1, 10);
        }
        var twentieth = Decimal.significant(number.abs().divide(20), 3);
        int places = twentieth.scale() - twentieth.precision() + 1;
        return Decimal.of(new BigDecimal(BigInteger.ONE, places));
    }
}
