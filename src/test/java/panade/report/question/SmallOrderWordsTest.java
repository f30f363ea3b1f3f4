package panade.report.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.report.Figures;
import panade.result.BuyResult.SmallOrder;

/** Orders below their supplier's minimum are told once for each supplier. Invented. */
class SmallOrderWordsTest {
    @Test
    void severalPeriodsOfASupplierAreOneLineFromLeastToMost() {
        var orders = List.of(order("mill", 30), order("farm", 5), order("mill", 20));
        assertThat(new SmallOrderWords(orders, 4, Figures::cash).lines())
                .containsExactly(
                        "Bought by exact weight, mill would sell for 20.00 to 30.00 in 2 of 4 periods: 70.00 to 80.00"
                                + " short of the minimum order.",
                        "Bought by exact weight, farm would sell for 5.00 in 1 of 4 periods: 95.00 short of the minimum"
                                + " order.");
    }

    private static SmallOrder order(String supplier, int goods) {
        return new SmallOrder("", supplier, BigFraction.of(goods), BigFraction.of(100 - goods));
    }
}
