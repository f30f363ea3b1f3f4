package panade.document.selector;

import java.util.List;
import java.util.Optional;
import panade.domain.Measure;
import panade.quantity.Dimension;
import panade.quantity.Unit;

/**
 * What a selector picks, as far as it could be understood.
 *
 * @param name what an unnamed bound on it is called
 * @param unit the unit it is told in; empty when its names mean nothing
 * @param plainMass whether it counts ingredients by weight and no property
 * @param parts what is added up; complete only when sound
 * @param sound whether every name in it was understood
 */
public record Selection(String name, Optional<Unit> unit, boolean plainMass, List<Measure.Part> parts, boolean sound) {
    public Selection {
        parts = List.copyOf(parts);
    }

    /** What it measures; empty when some of it was not understood. */
    public Optional<Measure> measure() {
        return sound ? unit.map(known -> new Measure(name, known, parts)) : Optional.empty();
    }

    /** Whether it is a mass in the batch, of goods or of something in them. */
    public boolean isMass() {
        return unit.filter(known -> known.dimension() == Dimension.SHARE).isPresent();
    }

    /** Whether it adds up scores without a unit. */
    public boolean isUnitless() {
        return unit.filter(known -> known.dimension() == Dimension.NUMBER).isPresent();
    }
}
