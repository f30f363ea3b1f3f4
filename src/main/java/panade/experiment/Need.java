package panade.experiment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Bound;
import panade.domain.Side;
import panade.learn.Fit;
import panade.learn.Form;
import panade.learn.Prediction;
import panade.learn.Prediction.Of;
import panade.quantity.Decimal;
import panade.trial.FittedResponse;

/**
 * What a measured response must come to in the next batch.
 *
 * @param response what it is asked of
 * @param side whether the number is a floor or a ceiling
 */
public record Need(FittedResponse response, Side side, BigFraction number) {
    /** Whether the trials say enough to hold a blend to it: a straight form, and something to judge the error by. */
    public boolean isKnown() {
        return response.form() == Form.LINEAR
                && response.fit().filter(fit -> fit.degrees() > 0).isPresent();
    }

    Fit fit() {
        return response.fit().orElseThrow();
    }

    /** What is predicted at a point. */
    Prediction at(Levers levers, List<BigFraction> point) {
        return fit().at(levers.of(response.response(), point));
    }

    /** How much of the response must be kept in hand there. */
    BigDecimal margin(Levers levers, List<BigFraction> point) {
        return at(levers, point).below(response.sure(), Of.BATCH).orElseThrow();
    }

    /** By how much a prediction with its margin misses the number; negative where it does not. */
    BigFraction missed(Levers levers, List<BigFraction> point) {
        var lacking = number.subtract(at(levers, point).mean());
        return (side == Side.MIN ? lacking : lacking.negate()).add(Decimal.of(margin(levers, point)));
    }

    /**
     * A bound that every blend keeps which is as sure as asked: the margin grows with the distance from what was tried,
     * and is never below its tangent at a point.
     *
     * @param number of the bound among those that are added
     */
    Bound tangent(Levers levers, List<BigFraction> point, int number) {
        var own = levers.of(response.response(), point);
        var here = fit().at(own);
        var margin = Decimal.of(margin(levers, point));
        var weights = new ArrayList<>(Collections.nCopies(levers.all().size(), BigFraction.ZERO));
        var limit = missed(levers, point);
        var sign = side == Side.MIN ? BigFraction.ONE : BigFraction.ONE.negate();
        var places = levers.of(response.response(), places(levers));
        for (int i = 0; i < own.size(); i++) {
            var step = unit(own.size(), i);
            var slope = fit().slope(own, step);
            var further = new ArrayList<>(own);
            further.set(i, own.get(i).add(1));
            var shared = fit().at(further)
                    .form()
                    .subtract(here.form())
                    .subtract(slope.form())
                    .divide(2);
            var rise = margin.multiply(shared).divide(here.form().add(1));
            var weight = slope.mean().multiply(sign).subtract(rise);
            int place = places.get(i).intValue();
            weights.set(place, weight);
            limit = levers.isSetting(place) ? limit : limit.add(weight.multiply(own.get(i)));
        }
        return LeverBounds.sum(response.response().name(), number, levers, weights, Side.MIN, limit);
    }

    private static List<BigFraction> unit(int size, int place) {
        var unit = new ArrayList<>(Collections.nCopies(size, BigFraction.ZERO));
        unit.set(place, BigFraction.ONE);
        return unit;
    }

    private static List<BigFraction> places(Levers levers) {
        var places = new ArrayList<BigFraction>();
        for (int i = 0; i < levers.all().size(); i++) {
            places.add(BigFraction.of(i));
        }
        return places;
    }
}
