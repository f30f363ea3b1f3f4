package panade.vary;

import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.quantity.Decimal;
import panade.reach.ShelfTarget;
import panade.scenario.PriceDraws;
import panade.vary.CompositionStudy.Broken;
import panade.vary.PriceStudy.Level;
import panade.vary.PriceStudy.Target;

/**
 * How what is made fares when prices and what its ingredients hold vary: nothing is solved, each draw is an exact sum.
 *
 * @param brief that it is measured against
 * @param blend what is made
 * @param costs over the draws of prices
 * @param contents over the draws of what its ingredients hold; null where none of them states a spread, or none were
 *     asked for
 * @param broken bounds that it breaks at the values as stated
 */
public record FormulaStudy(
        Brief brief, Blend blend, Costs costs, @Nullable Contents contents, List<Bound> broken) {
    private static final int PLACES = 12;
    private static final MathContext ROOT = MathContext.DECIMAL64;

    public FormulaStudy {
        broken = List.copyOf(broken);
    }

    /**
     * Costs per kilogram, each to a trillionth.
     *
     * @param deviation the standard deviation of the draws
     * @param target how often it costs no more than is hoped for; null where nothing is
     */
    public record Costs(
            long draws,
            BigFraction mean,
            BigFraction deviation,
            BigFraction lowest,
            BigFraction highest,
            List<Level> levels,
            @Nullable Target target) {
        public Costs {
            levels = List.copyOf(levels);
        }
    }

    /**
     * Draws of what the ingredients hold.
     *
     * @param values how many values vary
     * @param inside draws in which every bound is kept of which that is known
     * @param broken bounds that are broken in some draw, most often first
     */
    public record Contents(int draws, int values, int inside, List<Broken> broken) {
        public Contents {
            broken = List.copyOf(broken);
        }
    }

    /**
     * The study.
     *
     * @param spreads by offer, how far its price may be off on both sides, as a fraction of it
     * @param draws of the prices, one at least
     * @param compositions how often what the ingredients hold is drawn; none leaves it out
     */
    public static FormulaStudy of(
            Brief brief, Blend blend, Map<OfferId, BigFraction> spreads, long draws, int compositions, long seed) {
        var audit = new Audit(brief, blend);
        var known = brief.bounds().stream().filter(audit::isKnown).toList();
        return new FormulaStudy(
                brief,
                blend,
                costs(brief, drawn(blend, spreads, draws, seed)),
                compositions == 0 ? null : contents(brief.withBounds(known), blend, compositions, seed),
                known.stream().filter(bound -> !audit.isKept(bound)).toList());
    }

    private static List<BigFraction> drawn(Blend blend, Map<OfferId, BigFraction> spreads, long draws, long seed) {
        var offers = blend.lines().stream().map(Blend.Line::offer).distinct().toList();
        var paid = offers.stream().map(offer -> paid(blend, offer)).toList();
        var prices = new PriceDraws(
                seed,
                offers.stream()
                        .map(offer -> spreads.getOrDefault(offer.id(), BigFraction.ZERO))
                        .toList());
        return LongStream.range(0, draws)
                .parallel()
                .mapToObj(draw -> cost(paid, prices.factors(draw)))
                .sorted()
                .toList();
    }

    private static BigFraction paid(Blend blend, Offer offer) {
        return sum(blend.lines().stream()
                .filter(line -> line.offer().equals(offer))
                .map(Blend.Line::costPerKg)
                .toList());
    }

    private static BigFraction cost(List<BigFraction> paid, List<BigFraction> factors) {
        return Decimal.of(Decimal.round(
                sum(IntStream.range(0, paid.size())
                        .mapToObj(i -> paid.get(i).multiply(factors.get(i)))
                        .toList()),
                PLACES));
    }

    private static BigFraction sum(List<BigFraction> all) {
        return all.stream().reduce(BigFraction.ZERO, BigFraction::add);
    }

    private static Costs costs(Brief brief, List<BigFraction> ascending) {
        int draws = ascending.size();
        var mean = sum(ascending).divide(draws);
        var squares =
                sum(ascending.stream().map(cost -> cost.subtract(mean).pow(2)).toList());
        var variance = squares.divide(draws).bigDecimalValue(2 * PLACES, RoundingMode.HALF_EVEN);
        return new Costs(
                draws,
                mean,
                Decimal.of(variance.sqrt(ROOT)),
                ascending.get(0),
                ascending.get(draws - 1),
                Varying.LEVELS.stream()
                        .map(percent -> new Level(
                                BigFraction.of(percent, 100),
                                ascending.get(VaryingCompositions.rank(percent, draws) - 1)))
                        .toList(),
                ShelfTarget.hopedPerKg(brief)
                        .map(hoped -> new Target(
                                hoped,
                                ascending.stream()
                                        .filter(cost -> cost.compareTo(hoped) <= 0)
                                        .count()))
                        .orElse(null));
    }

    private static @Nullable Contents contents(Brief brief, Blend blend, int draws, long seed) {
        var ids = blend.lines().stream().map(line -> line.use().ingredient()).collect(Collectors.toSet());
        var values = DrawnValues.of(brief, ids, seed);
        if (values.count() == 0) {
            return null;
        }
        var sides = KeptSide.of(brief);
        var standings = IntStream.range(0, draws)
                .parallel()
                .mapToObj(draw -> {
                    var audit = new Audit(brief.withIngredientSet(values.set(draw)), blend);
                    return sides.stream().map(side -> side.standing(audit)).toList();
                })
                .toList();
        var broken = new ArrayList<Broken>();
        for (int i = 0; i < sides.size(); i++) {
            int side = i;
            sides.get(i)
                    .broken(standings.stream().map(each -> each.get(side)).toList())
                    .ifPresent(broken::add);
        }
        broken.sort(Comparator.comparing(Broken::draws).reversed().thenComparing(Broken::path));
        long inside = standings.stream()
                .filter(each -> each.stream().noneMatch(KeptSide.Standing::broken))
                .count();
        return new Contents(draws, values.count(), isOutside(brief, blend, sides) ? 0 : (int) inside, broken);
    }

    /** Whether a bound that no content changes is broken, and so in every draw. */
    private static boolean isOutside(Brief brief, Blend blend, List<KeptSide> sides) {
        var audit = new Audit(brief, blend);
        var varying = sides.stream().map(side -> side.bound().id()).toList();
        return brief.bounds().stream().anyMatch(bound -> !varying.contains(bound.id()) && !audit.isKept(bound));
    }
}
