package panade.report;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.quantity.Decimal;
import panade.quantity.Unit;

/** Weights of goods in the unit in which a kitchen keeps its stock, which that of its batch tells. */
record StockWeights(Unit unit) {
    static StockWeights of(Brief brief) {
        return new StockWeights(brief.batch().unit().ofStock());
    }

    /** A number to a hundredth. */
    String number(BigFraction kilograms) {
        return Decimal.round(unit.fromBase(kilograms), 2).toPlainString();
    }

    String text(BigFraction kilograms) {
        return number(kilograms) + " " + unit.symbol();
    }
}
