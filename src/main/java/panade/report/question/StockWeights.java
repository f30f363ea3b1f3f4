package panade.report.question;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;
import panade.result.BuyResult;

/** Weights of goods in the unit in which a kitchen keeps its stock. */
record StockWeights(BuyResult.Order order) {
    /** A number to a hundredth. */
    String number(BigFraction kilograms) {
        return Decimal.round(kilograms.divide(order.unitKilograms()), 2).toPlainString();
    }

    String text(BigFraction kilograms) {
        return number(kilograms) + " " + order.unit();
    }
}
