package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;

/**
 * How cost and blend behave when prices vary. Draws are counted; money is per kilogram.
 *
 * @param draws how many times all prices were drawn
 * @param seed what the draws start from
 * @param target null where no cost is hoped for
 * @param kept today's blend, whatever the prices
 * @param safest of the blends that were best most often, the one that is dearer by least at worst
 * @param prices how much each moves the cost, most first
 * @param ingredients how often each is in the best blend, most often first
 * @param bounds how often each holds the best blend back, most often first
 * @param compositions the same with what ingredients hold drawn as well; null where that was not done
 * @param remarks on the brief
 * @param title the product's
 * @param currency empty where none is stated
 * @param notes of the brief
 * @param spreadStated whether what some candidate holds is stated to vary
 * @param rules whether rules chose the ingredients; the choice is kept in all draws
 */
public record StudyResult(
        long draws,
        long seed,
        Cost cost,
        @Nullable Target target,
        Kept kept,
        Safest safest,
        List<Price> prices,
        List<Use> ingredients,
        List<Bound> bounds,
        Certificate certificate,
        @JsonInclude(Include.NON_NULL) @Nullable Compositions compositions,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String currency,
        @JsonIgnore List<String> notes,
        @JsonIgnore boolean spreadStated,
        @JsonIgnore boolean rules) {
    public StudyResult {
        prices = List.copyOf(prices);
        ingredients = List.copyOf(ingredients);
        bounds = List.copyOf(bounds);
        remarks = List.copyOf(remarks);
        notes = List.copyOf(notes);
    }

    /**
     * The least cost over all draws.
     *
     * @param todayPerKg at the prices as they are
     * @param deviationPerKg its standard deviation
     */
    public record Cost(
            BigFraction todayPerKg,
            BigFraction meanPerKg,
            BigFraction deviationPerKg,
            BigFraction lowestPerKg,
            BigFraction highestPerKg,
            List<Level> levels) {
        public Cost {
            levels = List.copyOf(levels);
        }
    }

    /** A cost that a share of the draws does not exceed. */
    public record Level(BigFraction share, BigFraction perKg) {}

    /** A cost that is hoped for, and the draws in which the least cost is no higher. */
    public record Target(BigFraction perKg, long metIn) {}

    /** What a blend that is kept costs above the best of each draw. */
    public record Kept(BigFraction meanAbovePerKg, BigFraction worstAbovePerKg, List<ShareLine> blend) {
        public Kept {
            blend = List.copyOf(blend);
        }
    }

    /**
     * The safest of several blends.
     *
     * @param compared of how many
     * @param today whether it is today's
     */
    public record Safest(
            @JsonUnwrapped Kept kept,
            int compared,
            @JsonIgnore boolean today) {}

    /**
     * The price of an offer.
     *
     * @param partOfVariance of the least cost that goes with it: a squared correlation
     * @param name of the ingredient
     */
    public record Price(
            String ingredient,
            String supplier,
            BigFraction partOfVariance,
            @JsonIgnore String name) {}

    /**
     * An ingredient that is in the best blend of some draws.
     *
     * @param meanShare of the batch over all draws
     * @param today its share of the batch at the prices as they are
     */
    public record Use(
            String ingredient,
            long draws,
            BigFraction meanShare,
            @JsonIgnore String name,
            @JsonIgnore BigFraction today) {}

    /** A bound's number that holds the best blend back in some draws. */
    public record Bound(String name, String path, Side binding, long draws) {}

    /**
     * Draws that were solved again in exact fractions.
     *
     * @param proved how many
     * @param off how many of those had been answered wrongly
     */
    public record Certificate(long proved, long off) {}

    /**
     * Draws of prices and of what ingredients hold.
     *
     * @param values how many values vary
     * @param proved draws that were solved and proved on their own: all
     * @param noBlend draws in which no blend meets every bound
     * @param keptMeets draws in which today's blend, kept as it is, meets every bound
     * @param target null where no cost is hoped for
     * @param broken bounds that today's blend breaks in some draw, most often first
     * @param cost of the cheapest blend where there is one; null when there never is
     */
    public record Compositions(
            int draws,
            int values,
            int proved,
            int noBlend,
            int keptMeets,
            @Nullable Target target,
            List<Broken> broken,
            @Nullable ComposedCost cost) {
        public Compositions {
            broken = List.copyOf(broken);
        }
    }

    /**
     * A bound that today's blend breaks in some draws.
     *
     * @param asks the bound's number, in its unit
     * @param oneInTwenty what the blend comes to or misses by more in one draw of twenty; null where fixed or not
     *     always a number
     * @param unit empty where the numbers have none
     */
    public record Broken(
            String name,
            String path,
            Side binding,
            int draws,
            BigFraction asks,
            @Nullable BigFraction oneInTwenty,
            String unit) {}

    /** The least cost over the draws that have a blend. */
    public record ComposedCost(
            BigFraction meanPerKg, BigFraction lowestPerKg, BigFraction highestPerKg, List<Level> levels) {
        public ComposedCost {
            levels = List.copyOf(levels);
        }
    }
}
