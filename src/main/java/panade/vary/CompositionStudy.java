package panade.vary;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Side;
import panade.quantity.Unit;
import panade.vary.PriceStudy.Level;

/**
 * How cost and blend behave when what ingredients hold varies with the prices. Every draw was solved and proved on its
 * own.
 *
 * @param draws how many times prices and values were drawn
 * @param values how many values vary
 * @param noBlend draws in which no blend meets every bound, each proved
 * @param keptMeets draws in which today's blend, kept as it is, meets every bound
 * @param broken bounds that today's blend breaks in some draw, most often first
 * @param target how often the least cost is no higher than what is hoped for; null where nothing is
 * @param costs what the cheapest blend costs where there is one; null when there never is
 */
public record CompositionStudy(
        int draws,
        int values,
        int noBlend,
        int keptMeets,
        List<Broken> broken,
        PriceStudy.@Nullable Target target,
        @Nullable Costs costs) {
    public CompositionStudy {
        broken = List.copyOf(broken);
    }

    /**
     * A bound that today's blend breaks in some draws.
     *
     * @param side which number of it
     * @param asks the bound's number, in its unit
     * @param oneInTwenty what the blend comes to or misses by more in one draw of twenty: the twentieth part from below
     *     for {@code min}, from above for {@code max}; null where fixed or not always a number
     */
    public record Broken(
            String name,
            String path,
            Side side,
            int draws,
            BigFraction asks,
            @Nullable BigFraction oneInTwenty,
            Unit unit) {}

    /** The least cost over the draws that have a blend, money per kg, each to a trillionth. */
    public record Costs(BigFraction mean, BigFraction lowest, BigFraction highest, List<Level> levels) {}
}
