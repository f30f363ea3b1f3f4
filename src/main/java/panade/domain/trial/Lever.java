package panade.domain.trial;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Measure;
import panade.domain.Use;
import panade.domain.origin.Origin;
import panade.domain.pantry.Composition;
import panade.quantity.Dimension;
import panade.quantity.Unit;

/** Something that trials differ in and that a response may follow. */
public sealed interface Lever {
    /** What its cook calls it. */
    String name();

    Origin origin();

    /** What its numbers are told in. */
    Unit unit();

    /** Its value in a mixing, in the base unit of its dimension; empty where the mixing does not say. */
    Optional<BigFraction> value(Weighed weighed, Map<String, BigFraction> process, Composition composition);

    /** What is measured of the blend for it. */
    List<Measure> measures();

    /** Whether it is a share of the batch by weight, so that several may add up to the whole. */
    default boolean isShare() {
        return false;
    }

    /**
     * What the blend holds of something.
     *
     * @param plain whether it counts ingredients by weight
     */
    record OfBlend(String name, Measure measure, boolean plain, Origin origin) implements Lever {
        @Override
        public Unit unit() {
            return measure.unit().dimension() == Dimension.SHARE ? Unit.PERCENT : measure.unit();
        }

        @Override
        public List<Measure> measures() {
            return List.of(measure);
        }

        @Override
        public boolean isShare() {
            return plain;
        }

        @Override
        public Optional<BigFraction> value(Weighed weighed, Map<String, BigFraction> process, Composition composition) {
            return Optional.of(weighed.amount(measure, composition).divide(weighed.total()));
        }
    }

    /** How much of one thing there is for another. */
    record OfRatio(String name, Measure measure, Measure per, Unit unit, Origin origin) implements Lever {
        @Override
        public List<Measure> measures() {
            return List.of(measure, per);
        }

        @Override
        public Optional<BigFraction> value(Weighed weighed, Map<String, BigFraction> process, Composition composition) {
            var below = weighed.amount(per, composition);
            return below.signum() == 0
                    ? Optional.empty()
                    : Optional.of(weighed.amount(measure, composition).divide(below));
        }
    }

    /** How it was made, such as minutes of rest. */
    record OfProcess(String name, String setting, Origin origin) implements Lever {
        @Override
        public List<Measure> measures() {
            return List.of();
        }

        @Override
        public Unit unit() {
            return Unit.NUMBER;
        }

        @Override
        public Optional<BigFraction> value(Weighed weighed, Map<String, BigFraction> process, Composition composition) {
            return Optional.ofNullable(process.get(setting));
        }
    }

    /** Ids of the ingredients of a mixing whose values it needs and nobody states. */
    default Set<String> unknown(Weighed weighed, Composition composition) {
        return weighed.kilograms().keySet().stream()
                .filter(use -> measures().stream().anyMatch(measure -> !measure.isKnown(use, composition)))
                .map(Use::ingredient)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
