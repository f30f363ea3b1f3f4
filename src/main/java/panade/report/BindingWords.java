package panade.report;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.explain.Explanation.ShadowPrice;
import panade.plan.NumberSteps;
import panade.plan.NumberSteps.Step;
import panade.plan.Outcome.Blended;
import panade.quantity.Decimal;

/** Says what a binding bound costs, in a round step that a cook would try. */
public final class BindingWords {
    /** Changes below a thousandth of a cent per kilogram are told as nothing. */
    private static final BigFraction NOTHING = BigFraction.of(1, 100_000);

    private final String currency;
    private final NumberSteps steps;

    /** Words on a blend, in its brief's currency if it has one. */
    public BindingWords(Blended blended) {
        this.currency = blended.brief().currency();
        this.steps = blended.steps();
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
                .sorted((a, b) -> weight(b).compareTo(weight(a)))
                .toList();
    }

    /** Whether a small move of the number is worth telling. */
    public static boolean matters(Limit limit) {
        var price = limit.price();
        boolean blocked = price != null && (price.whenRaised() == null || price.whenLowered() == null);
        return blocked || weight(limit).compareTo(NOTHING) >= 0;
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
        if (limit.kind() == LimitKind.LABEL) {
            return limit.title() + ": " + effect(limit) + ".";
        }
        var effect = effect(limit);
        return limit.title() + ", " + side(limit.touch()) + at(limit)
                + (effect.isEmpty() ? ": no step of it could be solved." : ": " + effect + ".");
    }

    private static String side(@Nullable Side touch) {
        return touch == Side.MIN ? "at its least " : touch == Side.MAX ? "at its most " : "fixed at ";
    }

    private static String at(Limit limit) {
        var number = limit.touch() == Side.MIN ? limit.min() : limit.max();
        return number == null ? "" : Figures.with(number, limit.unit());
    }

    /** What a round step of the number does to the cost, either way; empty when there is nothing to tell. */
    public String effect(Limit limit) {
        var price = limit.price();
        if (price == null || limit.touch() == null) {
            return "";
        }
        if (limit.kind() == LimitKind.LABEL) {
            return ofLabel(limit);
        }
        boolean min = limit.touch() == Side.MIN;
        var loosened = half(limit, !min, min ? " less asked" : " more allowed");
        if (isMirrored(price.whenRaised(), price.whenLowered()) && isWhole(limit, !min)) {
            return loosened;
        }
        var tightened = half(limit, min, min ? " more asked" : " less allowed");
        return loosened + (loosened.isEmpty() || tightened.isEmpty() ? "" : "; ") + tightened;
    }

    /** What a name's place on the label costs: it is no number that could be moved. */
    private String ofLabel(Limit limit) {
        return steps.costOf(limit)
                .map(cost -> "dropping this alone" + effect(cost.negate()))
                .orElse("what it costs could not be solved");
    }

    private static boolean isMirrored(@Nullable BigFraction raised, @Nullable BigFraction lowered) {
        return raised != null && lowered != null && raised.negate().equals(lowered);
    }

    /** Whether a whole step does what the rate says, so that the other way round it does the opposite. */
    private boolean isWhole(Limit limit, boolean up) {
        return steps.step(limit, up, step(limit), NOTHING) instanceof Step.Change change
                && change.steady()
                && change.size().equals(step(limit));
    }

    /** Empty where nothing was proved. */
    private String half(Limit limit, boolean up, String move) {
        var step = steps.step(limit, up, step(limit), NOTHING);
        if (step instanceof Step.Change change) {
            var size = Figures.with(change.size(), limit.unit()) + move;
            return (change.steady() ? "each " + size : size) + effect(change.change());
        }
        if (step instanceof Step.Jump jump) {
            return "any" + move + effect(jump.change()) + " at once, however little";
        }
        return step instanceof Step.NoBlend none
                ? Figures.with(none.size(), limit.unit()) + move + " leaves no blend"
                : "";
    }

    private String effect(BigFraction perKg) {
        var change = Figures.perPound(perKg);
        if (change.signum() == 0) {
            return " changes nothing";
        }
        var amount = Figures.significant(change.abs(), 2) + (currency.isEmpty() ? "" : " " + currency) + "/lb";
        return (change.signum() > 0 ? " would cost " : " would save ") + amount;
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
