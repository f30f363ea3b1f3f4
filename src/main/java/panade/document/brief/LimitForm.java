package panade.document.brief;

import java.util.Optional;
import panade.document.selector.Selection;
import panade.quantity.Dimension;
import panade.quantity.Unit;

/**
 * The form a bound's limits must have.
 *
 * @param what the selector's name, for messages
 * @param bare whether a bare number will do
 * @param unit the unit to be told in; empty when only a bare number will do or nothing is known
 * @param amount whether a weight in the batch will do
 * @param withinWhole whether a share must lie from 0 % to 100 %
 * @param anything whether the selector was not understood, so that any form may be right
 * @param example what to write
 */
record LimitForm(
        String what,
        boolean bare,
        Optional<Unit> unit,
        boolean amount,
        boolean withinWhole,
        boolean anything,
        String example) {

    /** The form for a bound on a selection alone. */
    static LimitForm of(Selection of) {
        if (of.unit().isEmpty()) {
            return anything(of.name(), true);
        }
        var unit = of.unit().get();
        if (of.isUnitless()) {
            return new LimitForm(of.name(), true, Optional.empty(), false, false, false, "a bare number, such as 6");
        }
        return new LimitForm(of.name(), false, of.unit(), of.isMass(), true, false, example(of, unit));
    }

    /** The form for a ratio; empty when the two sides do not compare. */
    static Optional<LimitForm> ratio(Selection of, Selection per) {
        var name = of.name() + " per " + per.name();
        if (of.unit().isEmpty() || per.unit().isEmpty()) {
            return Optional.of(anything(name, false));
        }
        if (per.plainMass() && !of.plainMass() && !of.isUnitless()) {
            return Optional.of(new LimitForm(
                    name,
                    false,
                    of.unit(),
                    false,
                    false,
                    false,
                    example(of, of.unit().get())));
        }
        if (of.isMass() && per.isMass()) {
            var example = "a bare number, such as 0.8, or a share, such as \"80 %\"";
            return Optional.of(new LimitForm(name, true, Optional.of(Unit.PERCENT), false, false, false, example));
        }
        boolean unitless = of.isUnitless() && (per.isMass() || per.isUnitless());
        boolean like = of.unit().get().measuresLike(per.unit().get());
        return unitless || like ? Optional.of(bareRatio(name)) : Optional.empty();
    }

    static LimitForm anything(String what, boolean withinWhole) {
        return new LimitForm(what, true, Optional.empty(), true, withinWhole, true, "a number with its unit");
    }

    private static LimitForm bareRatio(String name) {
        return new LimitForm(name, true, Optional.empty(), false, false, false, "a bare number, such as 1.5");
    }

    private static String example(Selection of, Unit unit) {
        if (of.plainMass()) {
            return "a share, such as \"10 %\", or a weight, such as \"2 kg\"";
        }
        var own = "\"10 " + unit.symbol() + "\"";
        return unit.dimension() == Dimension.SHARE && !unit.symbol().equals("%")
                ? "a share, such as \"10 %\" or " + own
                : "a number with its unit, such as " + own;
    }

    /** Whether a number in that unit is right. */
    boolean accepts(Unit found) {
        if (anything) {
            return true;
        }
        if (found.dimension() == Dimension.NUMBER) {
            return bare;
        }
        return (amount && found.dimension() == Dimension.MASS)
                || unit.filter(wanted -> wanted.measuresLike(found)).isPresent();
    }
}
