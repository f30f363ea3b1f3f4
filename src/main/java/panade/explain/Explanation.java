package panade.explain;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict.Optimum;
import panade.certify.sensitivity.Sensitivity;
import panade.compile.CompiledBrief;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.BoundId;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.domain.Sureness;
import panade.domain.origin.Origin;
import panade.lazy.Lazy;
import panade.model.Unproved;
import panade.quantity.Unit;

/**
 * Why a blend is as it is. Each part is worked out when it is first asked for, and once, from the proved optimum alone;
 * {@link Unproved} is thrown by a part that cannot be settled.
 */
public final class Explanation {
    private final LimitReader reader;
    private final Lazy<List<Binding>> bindings;
    private final Lazy<List<Limit>> limits;
    private final Lazy<List<Used>> used;
    private final Lazy<List<Unused>> unused;
    private final Lazy<Nearest> nearest;
    private final Lazy<List<PropertyValue>> properties;
    private final Lazy<Boolean> unique;

    /** A part that takes work of its own. */
    public enum Part {
        BINDINGS,
        LIMITS,
        USED,
        UNUSED,
        PROPERTIES,
        UNIQUE
    }

    /**
     * The explanation of a blend.
     *
     * @param optimum the proof of its least cost, of that brief's model
     * @param watcher told of each part once it is worked out
     */
    public Explanation(Brief brief, CompiledBrief compiled, Blend blend, Optimum optimum, Consumer<Part> watcher) {
        var sensitivity = new Sensitivity(optimum);
        // beside the point of a tangent another one counts, so that ranges of prices read off the last ones are not
        // told
        boolean bent = !compiled.cones().isEmpty();
        unique = part(Part.UNIQUE, watcher, () -> compiled.touchesItsCones() && sensitivity.isUnique());
        reader = new LimitReader(brief, compiled, blend, sensitivity, optimum.multipliers(), sensitivity::isUnique);
        var prices = new PriceReader(brief, compiled, blend, sensitivity);
        bindings = part(Part.BINDINGS, watcher, reader::bindings);
        limits = part(Part.LIMITS, watcher, reader::limits);
        used = part(Part.USED, watcher, () -> bent ? List.<Used>of() : prices.used());
        unused = part(Part.UNUSED, watcher, () -> bent ? List.<Unused>of() : prices.unused());
        nearest = new Lazy<>(() -> bent || prices.isShort() ? new Nearest(unused.get(), 0) : prices.nearest());
        properties = part(Part.PROPERTIES, watcher, new PropertyReader(brief, blend)::properties);
    }

    private static <T> Lazy<T> part(Part part, Consumer<Part> watcher, Supplier<T> work) {
        return new Lazy<>(() -> {
            var value = work.get();
            watcher.accept(part);
            return value;
        });
    }

    /** The bounds, ceilings and availabilities that the blend touches, in the brief's order; without their prices. */
    public List<Binding> bindings() {
        return bindings.get();
    }

    /** Every bound, ceiling and availability with its value, in the brief's order. */
    public List<Limit> limits() {
        return limits.get();
    }

    /** What is in the blend and how far its prices may move, by id. */
    public List<Used> used() {
        return used.get();
    }

    /** Candidates that are not in the blend, by id. */
    public List<Unused> unused() {
        return unused.get();
    }

    /** Those of the unused that are nearest to coming in. */
    public Nearest nearest() {
        return nearest.get();
    }

    /** What the blend holds. */
    public List<PropertyValue> properties() {
        return properties.get();
    }

    /** What any blend holds, proved or not. */
    public static List<PropertyValue> holdings(Brief brief, Blend blend) {
        return new PropertyReader(brief, blend).properties();
    }

    /** Whether no other blend costs as little. */
    public boolean unique() {
        return unique.get();
    }

    /** How one number of a bound stands, whether or not the blend touches it; worked out each time it is asked for. */
    public SideReading number(Bound bound, Side side) {
        return reader.number(bound, side);
    }

    /**
     * This explanation with its parts worked out, so that none of them can fail any more; of the unused, those that are
     * nearest to coming in.
     */
    public Explanation complete() {
        Stream.of(bindings, limits, used, nearest, properties, unique).forEach(Lazy::get);
        return this;
    }

    /** A limit that the blend touches, on one side or, where it is fixed, on both. */
    public record Binding(LimitKind kind, BoundId id, String title, Side side) {
        /** Whether it is that bound's. */
        public boolean isOf(Bound bound) {
            return kind == bound.kind() && id.equals(bound.id());
        }
    }

    /**
     * A bound as the blend meets it; all numbers are in {@code unit}.
     *
     * @param value null when it is nothing over nothing
     * @param kind who asks for it
     * @param name as documents and commands know it
     * @param title as people read it
     * @param touch the side that binds; null when the bound is idle
     * @param price null when the bound is idle
     * @param sure how sure it is to hold; null where contents are taken as stated
     */
    public record Limit(
            LimitKind kind,
            String name,
            String title,
            String path,
            Unit unit,
            @Nullable BigFraction value,
            @Nullable BigFraction min,
            @Nullable BigFraction max,
            @Nullable Side touch,
            @Nullable ShadowPrice price,
            @Nullable Clearance sure,
            Origin origin) {
        /** Whether it is read off that bound. */
        public boolean isOf(Bound bound) {
            return kind == bound.kind() && BoundId.of(kind, origin, path, name).equals(bound.id());
        }
    }

    /**
     * How a blend keeps a bound although contents vary.
     *
     * @param asked how surely
     * @param variance of the value, in the bound's unit squared
     */
    public record Clearance(Sureness asked, BigFraction variance) {}

    /**
     * What moving a bound's number by one of its own unit does to the least cost, in money per kilogram of batch. The
     * two rates are one-sided; they differ where the optimum is degenerate.
     *
     * @param whenRaised null when no blend exists on that side, or the cost jumps there
     * @param whenLowered null when no blend exists on that side, or the cost jumps there
     * @param from how far the number may be lowered with that rate; null when unlimited or not known
     * @param to how far the number may be raised with that rate; null when unlimited or not known
     * @param jumpRaised by how much the least cost jumps as soon as the number is raised at all, to stay there however
     *     far; null when it does not jump
     * @param jumpLowered the same as soon as it is lowered
     */
    public record ShadowPrice(
            @Nullable BigFraction whenRaised,
            @Nullable BigFraction whenLowered,
            @Nullable BigFraction from,
            @Nullable BigFraction to,
            @Nullable BigFraction jumpRaised,
            @Nullable BigFraction jumpLowered) {

        /** Whether the cost stays when the number is moved a little either way. */
        public boolean isIdle() {
            return isZero(whenRaised) && isZero(whenLowered);
        }

        /**
         * The price of the floor (or ceiling) alone, of a fixed bound: it can't go past the other, and the other way
         * the blend follows only where that saves.
         */
        ShadowPrice loosening(boolean floor) {
            var rate = floor ? whenLowered : whenRaised;
            boolean saves = rate != null && rate.signum() < 0;
            var kept = saves ? rate : BigFraction.ZERO;
            return floor
                    ? new ShadowPrice(null, kept, saves ? from : null, null, null, null)
                    : new ShadowPrice(kept, null, null, saves ? to : null, null, null);
        }

        private static boolean isZero(@Nullable BigFraction rate) {
            return rate != null && rate.signum() == 0;
        }

        /** Whether there is no blend at any higher number. */
        public boolean blockedAbove() {
            return whenRaised == null && jumpRaised == null;
        }

        /** Whether there is no blend at any lower number. */
        public boolean blockedBelow() {
            return whenLowered == null && jumpLowered == null;
        }
    }

    /**
     * How one number of a bound stands at a blend.
     *
     * @param value what the blend has, in the bound's unit; null when it is nothing over nothing
     * @param price null when the blend stays clear of the number
     */
    public record SideReading(
            @Nullable BigFraction value, @Nullable ShadowPrice price) {}

    /**
     * An offer that is used, and between which of its prices per kilogram as bought the blend stays the best.
     *
     * @param from null when the blend stays however cheap it gets
     * @param to null when the blend stays however dear it gets
     */
    public record Used(
            String ingredient,
            String supplier,
            BigFraction pricePerKg,
            @Nullable BigFraction from,
            @Nullable BigFraction to) {}

    /**
     * An ingredient that could be bought but is not used.
     *
     * @param supplier whose offer is the cheapest
     * @param pricePerKg that offer's price, as bought
     * @param entry when it would come in; null when no price above zero brings it in
     */
    public record Unused(
            String ingredient,
            String supplier,
            BigFraction pricePerKg,
            @Nullable Entry entry) {}

    /**
     * Unused ingredients by how little of their price must go before they come in, as a part of it.
     *
     * @param first the nearest, that first; all of them by id where they are few
     * @param others how many more there are, of which none comes in before those
     */
    public record Nearest(List<Unused> first, int others) {}

    /**
     * How an unused ingredient would come in.
     *
     * @param at the price per kilogram as bought below which it would
     * @param share how much of the batch it would then make up
     * @param saving what the blend would save per kilogram if the price were lower still, by
     *     {@link PriceReader#SAVING_TEST_DISCOUNT}
     * @param worthwhile whether that saving is at least a cent per pound or half a per cent of the cost
     */
    public record Entry(BigFraction at, BigFraction share, BigFraction saving, boolean worthwhile) {}

    /**
     * A property of the blend, in the property's unit.
     *
     * @param value null when some ingredient's value is not known
     */
    public record PropertyValue(
            String property,
            String title,
            Unit unit,
            @Nullable BigFraction value) {}
}
