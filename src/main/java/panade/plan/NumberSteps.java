package panade.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Decision;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.domain.purchase.Offer;
import panade.explain.Explanation.Limit;
import panade.quantity.Dimension;
import panade.quantity.Quantity;

/**
 * What comes of moving a number that binds by a step that a cook would try. Each answer is a least cost of its own,
 * solved and proved with the number moved, and only when somebody asks.
 */
public final class NumberSteps {
    /** Parts of a step that are tried where its rate does not hold so far. */
    private static final List<Integer> PARTS = List.of(1, 2, 5, 10, 20, 50, 100);

    /** In per cent of the batch, more than any difference between two parts of it can be. */
    private static final BigFraction NO_BOUND = BigFraction.of(1000);

    private final Brief brief;
    private final BigFraction cost;
    private final Function<Brief, Decision<BigFraction>> leastCost;
    private final Map<Asked, Step> known = new ConcurrentHashMap<>();

    /**
     * Steps from a blend.
     *
     * @param brief the brief whose linear model was proved
     * @param cost its least cost per kilogram
     * @param leastCost the proved least cost of a brief that differs in one number; impossible when it has no blend
     */
    NumberSteps(Brief brief, BigFraction cost, Function<Brief, Decision<BigFraction>> leastCost) {
        this.brief = brief;
        this.cost = cost;
        this.leastCost = leastCost;
    }

    private record Asked(Limit limit, boolean up, BigFraction step) {}

    /** What comes of a step. */
    public sealed interface Step {
        /**
         * The least cost changes.
         *
         * @param size how far the number was moved, in its unit
         * @param change of the least cost per kilogram
         * @param steady whether each further step of that size does the same, up to the end of the rate
         */
        record Change(BigFraction size, BigFraction change, boolean steady) implements Step {}

        /** No blend is left. */
        record NoBlend(BigFraction size) implements Step {}

        /** The least cost jumps however small the step. */
        record Jump(BigFraction change) implements Step {}

        /** Nothing can be said: no document may state that number, or nothing was proved. */
        record Unknown() implements Step {}
    }

    /**
     * The step up or down of a limit's binding number.
     *
     * @param size the step that a cook would try; one of its round parts is taken where the rate ends before
     * @param least changes of cost per kilogram below this are not worth a smaller step
     */
    public Step step(Limit limit, boolean up, BigFraction size, BigFraction least) {
        return known.computeIfAbsent(new Asked(limit, up, size), asked -> found(limit, up, size, least));
    }

    private Step found(Limit limit, boolean up, BigFraction size, BigFraction least) {
        var price = limit.price();
        if (price == null) {
            return new Step.Unknown();
        }
        var rate = up ? price.whenRaised() : price.whenLowered();
        var held = rate == null ? null : held(limit, rate, up ? price.to() : price.from(), size, least);
        var taken = held == null ? size : held;
        var moved = moved(limit, up ? taken : taken.negate());
        if (moved.isEmpty()) {
            return new Step.Unknown();
        }
        return leastCost
                .apply(moved.get())
                .fold(
                        found -> change(found.subtract(cost), taken, held == null ? null : rate, jump(limit, up)),
                        () -> new Step.NoBlend(taken),
                        undecided -> new Step.Unknown());
    }

    /**
     * What a limit that no document states as a number costs: by how much per kilogram the least cost falls when it
     * alone is not asked; empty where nothing was proved.
     */
    public Optional<BigFraction> costOf(Limit limit) {
        var freed = bound(limit)
                .map(bound -> brief.replacing(
                        bound,
                        bound.withLimits(
                                bound.min() == null ? null : Quantity.of(NO_BOUND.negate(), limit.unit(), "free"),
                                bound.max() == null ? null : Quantity.of(NO_BOUND, limit.unit(), "free"))));
        return freed.flatMap(other -> leastCost.apply(other).found()).map(cost::subtract);
    }

    private static @Nullable BigFraction jump(Limit limit, boolean up) {
        var price = limit.price();
        return price == null ? null : up ? price.jumpRaised() : price.jumpLowered();
    }

    private static Step change(
            BigFraction change, BigFraction size, @Nullable BigFraction rate, @Nullable BigFraction jump) {
        if (jump != null && jump.equals(change)) {
            return new Step.Jump(change);
        }
        return new Step.Change(size, change, rate != null && isSteady(change, rate.multiply(size)));
    }

    /** A ratio's cost bends a little; a hundredth is not seen in two digits. */
    private static boolean isSteady(BigFraction change, BigFraction promised) {
        return change.subtract(promised).abs().multiply(100).compareTo(promised.abs()) <= 0;
    }

    /** The largest part of a step up to whose end the rate holds; null when no part worth telling does. */
    private static @Nullable BigFraction held(
            Limit limit, BigFraction rate, @Nullable BigFraction end, BigFraction size, BigFraction least) {
        var number = Optional.ofNullable(number(limit));
        for (int part : PARTS) {
            var taken = size.divide(part);
            boolean holds = end == null
                    || number.map(from -> end.subtract(from).abs().compareTo(taken) >= 0)
                            .orElse(false);
            boolean counts = part == 1 || rate.abs().multiply(taken).compareTo(least) >= 0;
            if (holds && counts) {
                return taken;
            }
        }
        return null;
    }

    private static @Nullable BigFraction number(Limit limit) {
        return limit.touch() == Side.MIN ? limit.min() : limit.max();
    }

    /** The brief with the number moved; empty where no document may state it. */
    private Optional<Brief> moved(Limit limit, BigFraction by) {
        var number = number(limit);
        var side = limit.touch();
        if (number == null || side == null) {
            return Optional.empty();
        }
        var quantity = Quantity.of(number.add(by), limit.unit(), "moved");
        if (limit.kind() == LimitKind.AVAILABILITY) {
            return offer(limit)
                    .filter(offer -> quantity.number().signum() >= 0)
                    .map(offer -> brief.replacing(offer, offer.withAvailable(quantity)));
        }
        return bound(limit)
                .filter(bound -> mayState(bound, quantity))
                .map(bound -> brief.replacing(bound, bound.withNumber(side, quantity)));
    }

    private Optional<Offer> offer(Limit limit) {
        return brief.offers().stream()
                .filter(offer -> offer.origin().equals(limit.origin()))
                .findFirst();
    }

    private Optional<Bound> bound(Limit limit) {
        return brief.bounds().stream()
                .filter(limit::isOf)
                .filter(bound -> isComparable(bound, limit.touch()))
                .findFirst();
    }

    /** Whether the number that binds can be told in the bound's unit: a share of something has no weight. */
    private static boolean isComparable(Bound bound, @Nullable Side touch) {
        var limit = touch == Side.MIN ? bound.min() : bound.max();
        return bound.per() == null
                || (limit != null && Bound.isAmount(limit) == (bound.unit().dimension() == Dimension.MASS));
    }

    /** Documents may not state weights below nothing, or shares outside nothing and all; a ratio may pass one. */
    private static boolean mayState(Bound bound, Quantity moved) {
        var dimension = moved.unit().dimension();
        boolean below = moved.base().signum() < 0;
        boolean above = moved.base().compareTo(BigFraction.ONE) > 0;
        if (bound.kind() == LimitKind.LABEL) {
            // no document states its number: it is how far one name may come after another
            return true;
        }
        return dimension == Dimension.MASS
                ? !below
                : dimension != Dimension.SHARE || (!below && (bound.per() != null || !above));
    }
}
