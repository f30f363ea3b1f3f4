package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.report.Figures;
import panade.result.BoundResult;
import panade.result.BoundResult.Step;

/**
 * Says what a binding bound costs, in a round step that a cook would try.
 *
 * @param currency empty where none is stated
 */
public record BindingWords(String currency) {
    /** One sentence for each bound whose number moves the cost, dearest first; the others share the last one. */
    List<String> points(List<BoundResult> bounds) {
        var points = new ArrayList<String>();
        holding(bounds).stream().map(this::sentence).forEach(points::add);
        var idle = touchedInVain(bounds).stream().map(BoundResult::name).toList();
        if (!idle.isEmpty()) {
            points.add("Touched, but a small move either way changes nothing: " + String.join(", ", idle) + ".");
        }
        return points;
    }

    /** The same of so many of the dearest; the others are counted. */
    List<String> dearest(List<BoundResult> bounds, int most) {
        var points = new ArrayList<String>();
        var holding = holding(bounds);
        holding.stream().limit(most).map(this::sentence).forEach(points::add);
        int more = holding.size() - most;
        if (more > 0) {
            points.add(
                    "and " + more + (more == 1 ? " more, which holds" : " more, each of which holds") + " it up less.");
        }
        int idle = touchedInVain(bounds).size();
        if (idle > 0) {
            points.add("Touched, but a small move either way changes nothing: " + idle
                    + (idle == 1 ? " bound." : " bounds."));
        }
        return points;
    }

    private static List<BoundResult> holding(List<BoundResult> bounds) {
        return touched(bounds).stream().filter(BoundResult::holdsCostUp).toList();
    }

    private static List<BoundResult> touchedInVain(List<BoundResult> bounds) {
        return touched(bounds).stream().filter(bound -> !bound.holdsCostUp()).toList();
    }

    /** The bounds that the blend touches, dearest first. */
    public static List<BoundResult> touched(List<BoundResult> bounds) {
        return bounds.stream()
                .filter(bound -> bound.binding() != null)
                .sorted((a, b) -> b.stepCost().subtract(a.stepCost()).signum())
                .toList();
    }

    private String sentence(BoundResult bound) {
        var effect = effect(bound);
        if (bound.kind() == LimitKind.LABEL) {
            return bound.title() + ": " + effect + ".";
        }
        return bound.title() + ", " + side(bound.binding()) + at(bound)
                + (effect.isEmpty() ? ": no step of it could be solved." : ": " + effect + ".");
    }

    private static String side(@Nullable Side binding) {
        return binding == Side.MIN ? "at its least " : binding == Side.MAX ? "at its most " : "fixed at ";
    }

    private static String at(BoundResult bound) {
        var number = bound.binding() == Side.MIN ? bound.min() : bound.max();
        var sure = bound.sure();
        return number == null
                ? ""
                : Figures.with(number, bound.unit()) + (sure == null ? "" : " (" + SureTable.words(sure) + ")");
    }

    /** What a round step of the number does to the cost, either way; empty when there is nothing to tell. */
    public String effect(BoundResult bound) {
        var moves = bound.moves();
        if (moves == null) {
            return "";
        }
        if (bound.kind() == LimitKind.LABEL) {
            return ofLabel(moves.dropped());
        }
        boolean min = bound.binding() == Side.MIN;
        var loosened = half(bound, moves.loosened(), min ? " less asked" : " more allowed");
        var tightened = half(bound, moves.tightened(), min ? " more asked" : " less allowed");
        return loosened + (loosened.isEmpty() || tightened.isEmpty() ? "" : "; ") + tightened;
    }

    /** What a name's place on the label costs: it is no number that could be moved. */
    private String ofLabel(@Nullable BigFraction cost) {
        return cost == null ? "what it costs could not be solved" : "dropping this alone" + effect(cost.negate());
    }

    /** Empty where nothing was proved. */
    private String half(BoundResult bound, @Nullable Step step, String move) {
        if (step == null) {
            return "";
        }
        var size = Figures.with(step.size(), bound.unit()) + move;
        return switch (step.effect()) {
            case STEADY -> "each " + size + effect(step.change());
            case ONCE -> size + effect(step.change());
            case JUMP -> "any" + move + effect(step.change()) + " at once, however little";
            case NO_BLEND -> size + " leaves no blend";
        };
    }

    private String effect(BigFraction perKg) {
        var change = Figures.perPound(perKg);
        if (change.signum() == 0) {
            return " changes nothing";
        }
        var amount = Figures.significant(change.abs(), 2) + (currency.isEmpty() ? "" : " " + currency) + "/lb";
        return (change.signum() > 0 ? " would cost " : " would save ") + amount;
    }
}
