package panade.experiment;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.design.TrialWorth;
import panade.learn.Prediction.Of;

/**
 * What more mixings are worth, by what need not be kept in hand after them.
 *
 * @param blend the cheapest that is sure enough now
 */
record Worth(Levers levers, List<Need> needs, SureBlend blend) {
    private static final int DIGITS = 30;

    /** Money per kilogram that mixings at some points could free together. */
    BigDecimal of(List<List<BigFraction>> points) {
        var sum = BigDecimal.ZERO;
        for (int i = 0; i < needs.size(); i++) {
            var need = needs.get(i);
            var response = need.response().response();
            var price = blend.prices().get(i).bigDecimalValue(DIGITS, RoundingMode.HALF_EVEN);
            var worth = new TrialWorth(
                    need.fit(),
                    levers.of(response, blend.point()),
                    need.response().sure(),
                    Of.BATCH);
            var tried = points.stream()
                    .map(point -> levers.of(response, Levers.rounded(point)))
                    .toList();
            sum = sum.add(worth.saving(tried, price).orElse(BigDecimal.ZERO));
        }
        return sum;
    }
}
