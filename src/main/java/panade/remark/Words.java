package panade.remark;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Bound;
import panade.domain.origin.Remark;
import panade.quantity.Decimal;
import panade.quantity.Unit;

/** Words that remarks share. */
final class Words {
    private static final int DIGITS = 3;

    private Words() {}

    static String number(BigFraction value) {
        return Decimal.significant(value, DIGITS).toPlainString();
    }

    /** A value in base units, told in a unit. */
    static String in(Unit unit, BigFraction base) {
        var number = number(unit.fromBase(base));
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    static Remark on(Bound bound, String text) {
        return new Remark(bound.origin(), text);
    }
}
