package panade.domain.purchase;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Unit;

/**
 * What a product costs beside its ingredients.
 *
 * @param minutes of paid labour for each batch, however large
 * @param minutesPerLb of paid labour for each pound that is made, before anything is lost
 * @param perHour money for an hour of labour
 * @param packagingPerKg money per kilogram sold
 * @param overheadPerKg money per kilogram sold
 * @param processLoss fraction of what is weighed in that never gets packed
 */
public record Costs(
        BigFraction minutes,
        BigFraction minutesPerLb,
        BigFraction perHour,
        BigFraction packagingPerKg,
        BigFraction overheadPerKg,
        BigFraction processLoss) {
    private static final int MINUTES_AN_HOUR = 60;

    /** Money for the labour that a batch takes however large it is. */
    public BigFraction labourPerBatch() {
        return minutes.multiply(perHour).divide(MINUTES_AN_HOUR);
    }

    /**
     * Money for labour per packed kilogram of a batch of that many kilograms. What is lost in making was worked on like
     * the rest, so all minutes are paid by what gets packed.
     */
    public BigFraction labourPerPackedKg(BigFraction batchKg) {
        var pounds = batchKg.divide(Unit.POUND.factor());
        var worked = minutes.add(minutesPerLb.multiply(pounds));
        return perPacked(worked.multiply(perHour).divide(MINUTES_AN_HOUR).divide(batchKg));
    }

    /** Money per packed kilogram, from money per kilogram made. */
    public BigFraction perPacked(BigFraction perKgMade) {
        return perKgMade.divide(packedPart());
    }

    /** Kilograms packed of each kilogram made. */
    public BigFraction packedPart() {
        return BigFraction.ONE.subtract(processLoss);
    }

    /** Money per packed kilogram, all in, of a batch of that many kilograms. */
    public BigFraction packedPerKg(BigFraction ingredientsPerKg, BigFraction batchKg) {
        return perPacked(ingredientsPerKg)
                .add(labourPerPackedKg(batchKg))
                .add(packagingPerKg)
                .add(overheadPerKg);
    }
}
