package panade.domain;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Origin;
import panade.quantity.Dimension;
import panade.quantity.Quantity;
import panade.quantity.Unit;

/**
 * A floor, a ceiling or both on something that can be measured.
 *
 * @param kind who asks for it
 * @param name what the brief calls it, or its selector and limits as written
 * @param path where a result points to: a JSON Pointer into the document that states it; where a brief is based on
 *     another, two bounds can have the same one in their two documents
 * @param of what is measured
 * @param per what it is measured against; null for the whole batch. In a stage it is that stage's mass.
 * @param min the floor; null when there is none
 * @param max the ceiling; null when there is none
 * @param state {@code raw}, or {@code cooked} for a bound that holds after the cooking loss
 * @param origin where it was written
 * @param written what a bound on the cooked batch was written on; null for one on the raw batch
 * @param sure how sure it is to hold although contents vary; null where they are taken as stated
 */
public record Bound(
        LimitKind kind,
        String name,
        String path,
        Measure of,
        @Nullable Measure per,
        @Nullable Quantity min,
        @Nullable Quantity max,
        String state,
        Origin origin,
        @Nullable Written written,
        @Nullable Sureness sure) {

    /**
     * What a bound on the cooked batch was written on, before it was put into terms of the raw one.
     *
     * @param per null for the whole cooked batch
     */
    public record Written(Measure of, @Nullable Measure per) {}

    /** A bound on the raw batch, or on a cooked one that is still to be put into its terms. */
    public Bound(
            LimitKind kind,
            String name,
            String path,
            Measure of,
            @Nullable Measure per,
            @Nullable Quantity min,
            @Nullable Quantity max,
            String state,
            Origin origin) {
        this(kind, name, path, of, per, min, max, state, origin, null, null);
    }

    /** What people read: the name, but ingredients' names and not their ids where no brief gave one. */
    public String title() {
        return switch (kind) {
            case CEILING -> of.name() + ", most that may be used";
            case RULE -> of.name();
            default -> name;
        };
    }

    /** Which bound it is; the same whatever its limits. */
    public BoundId id() {
        return BoundId.of(kind, origin, path, name);
    }

    /** The unit its value is told in: the ceiling's, or else the floor's. */
    public Unit unit() {
        var limit = max != null ? max : min;
        return limit == null ? of.unit() : limit.unit();
    }

    /** Whether what it bounds is known from trials. */
    public boolean isLearned() {
        return sure != null && sure.estimated() != null;
    }

    /** The same bound with other limits. */
    public Bound withLimits(@Nullable Quantity least, @Nullable Quantity most) {
        return new Bound(kind, name, path, of, per, least, most, state, origin, written, sure);
    }

    /** The same bound, sure to hold; null for one that takes contents as stated. */
    public Bound withSureness(@Nullable Sureness other) {
        return new Bound(kind, name, path, of, per, min, max, state, origin, written, other);
    }

    /** The same bound with another number on one side, or on both. */
    public Bound withNumber(Side side, @Nullable Quantity number) {
        return withLimits(side == Side.MAX ? min : number, side == Side.MIN ? max : number);
    }

    /**
     * Whether floor and ceiling are the same amount in a batch, whatever their units. A share of anything but the whole
     * batch can't be compared with a weight. What is to be sure keeps away from its numbers, and so is never fixed.
     */
    public boolean isFixed(Quantity batch) {
        if (min == null || max == null || sure != null) {
            return false;
        }
        boolean alike = per == null || isAmount(min) == isAmount(max);
        return alike && level(min, batch).equals(level(max, batch));
    }

    /** A limit as a number that compares with the bound's other one: weights as shares of the batch. */
    public static BigFraction level(Quantity limit, Quantity batch) {
        return isAmount(limit) ? limit.base().divide(batch.base()) : limit.base();
    }

    /** Whether a limit is a weight in the batch, whatever the bound is relative to otherwise. */
    public static boolean isAmount(Quantity limit) {
        return limit.unit().dimension() == Dimension.MASS;
    }
}
