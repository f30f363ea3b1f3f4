package panade.sheet;

import org.apache.commons.numbers.fraction.BigFraction;

/** What stands in a cell. */
public sealed interface Cell {
    /** Nothing. */
    Cell BLANK = new Text("", Look.PLAIN);

    /** Words, which no spreadsheet takes for a formula whatever they begin with. */
    record Text(String text, Look look) implements Cell {}

    /** A number. */
    record Figure(BigFraction value, Form form, Look look) implements Cell {}

    /**
     * A formula that stays live.
     *
     * @param expression without the equals sign
     * @param value what it comes to as the sheet is written
     */
    record Formula(String expression, BigFraction value, Form form, Look look) implements Cell {}

    /** A formula that comes to words. */
    record Remark(String expression, String value, Look look) implements Cell {}

    /** How a cell looks. */
    enum Look {
        PLAIN,
        TITLE,
        HEADING,
        /** A number that is the reader's to change. */
        INPUT,
        /** Words that are the reader's to change, and stay as they are typed whatever a spreadsheet makes of such. */
        TYPED,
        /** Sentences, which go on in the next line where their column ends. */
        PROSE,
        TOTAL
    }

    /** How a number is shown; the cell holds all of its digits. */
    enum Form {
        /** As it is. */
        PLAIN("General"),
        /** Two digits after the point, as money has them. */
        CASH("0.00"),
        /** Prices per weight. */
        PRICE("0.0000"),
        /** A part of the whole as per cent. */
        SHARE("0.00%"),
        /** Amounts in food; the digits that a draft of a label shows of exact ones. */
        AMOUNT("0.000"),
        /** Kilograms to the gram. */
        WEIGHT("0.000"),
        /** One to four digits after the point: with none, spreadsheet programs leave the point standing alone. */
        VALUE("0.0###");

        private final String code;

        Form(String code) {
            this.code = code;
        }

        /** The number format as spreadsheets write it (ECMA-376, part 1, 18.8.30). */
        public String code() {
            return code;
        }
    }

    /** Plain words. */
    static Cell text(String text) {
        return new Text(text, Look.PLAIN);
    }

    /** Sentences. */
    static Cell prose(String text) {
        return new Text(text, Look.PROSE);
    }

    /** The words over a column. */
    static Cell heading(String text) {
        return new Text(text, Look.HEADING);
    }

    /** A number that belongs to what was found. */
    static Cell figure(BigFraction value, Form form) {
        return new Figure(value, form, Look.PLAIN);
    }

    /** A number that is the reader's to change. */
    static Cell input(BigFraction value, Form form) {
        return new Figure(value, form, Look.INPUT);
    }

    /** A live formula. */
    static Cell formula(String expression, BigFraction value, Form form) {
        return new Formula(expression, value, form, Look.PLAIN);
    }

    /** A live sum at the foot of a column. */
    static Cell total(String expression, BigFraction value, Form form) {
        return new Formula(expression, value, form, Look.TOTAL);
    }
}
