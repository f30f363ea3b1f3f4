package panade.sheet.poi;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The number somebody typed into a spreadsheet. Some programs store it as it is, some the nearest binary number with 17
 * digits: 0.07 as 7.0000000000000007E-2. Any number of up to 15 digits comes back from its nearest binary number (IEEE
 * 754), so where 15 digits name the same binary number as what is stored, they are what was typed.
 */
final class Typed {
    private static final MathContext SHOWN = new MathContext(BookWriter.DIGITS, RoundingMode.HALF_EVEN);

    /** A spreadsheet's own numbers have fewer digits, before the point and behind it; others are left to the reader. */
    private static final int LONGEST = 400;

    private Typed() {}

    static String number(String stored) {
        if (stored.length() > LONGEST) {
            return stored;
        }
        var exact = new BigDecimal(stored);
        var typed = exact.round(SHOWN);
        boolean same = Double.compare(typed.doubleValue(), exact.doubleValue()) == 0;
        // 17 digits is what binary storage writes; more were written by somebody who meant them.
        return plain(same && exact.precision() <= 17 ? typed : exact);
    }

    /** A result, to the digits that a spreadsheet computes with. */
    static String computed(String stored) {
        return stored.length() > LONGEST ? stored : plain(new BigDecimal(stored).round(SHOWN));
    }

    private static String plain(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        var shortest = number.stripTrailingZeros();
        return Math.abs((long) shortest.scale()) > LONGEST ? shortest.toString() : shortest.toPlainString();
    }
}
