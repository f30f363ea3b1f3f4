package panade.domain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Measure.Part;
import panade.domain.pantry.IngredientSet;

/**
 * What a batch weighs and holds after cooking, as measures of the raw batch: all of it stays linear.
 *
 * @param lose fraction of each component that is lost
 * @param set the pantry, for sums of components
 */
public record Cooking(Map<String, BigFraction> lose, IngredientSet set) {
    /** Components that make up a weight without overlap; what else is lost is a part of one of them. */
    private static final Set<String> PROXIMATES =
            Set.of("WATER", "PROCNT", "FAT", "CHOCDF", "CHOAVL", "FIBTG", "ASH", "ALC");

    public Cooking {
        lose = Map.copyOf(lose);
    }

    /** The measure after cooking. */
    public Measure cooked(Measure raw) {
        var parts = new ArrayList<Part>();
        raw.parts().forEach(part -> parts.addAll(part.properties().isEmpty() ? mass(part) : List.of(content(part))));
        return new Measure(raw.name(), raw.unit(), parts);
    }

    /** What some ingredients weigh, less what they lose. */
    private List<Part> mass(Part part) {
        var lost = new HashMap<String, BigFraction>();
        lose.forEach((id, share) -> {
            if (PROXIMATES.contains(id)) {
                lost.put(id, share.negate());
            }
        });
        return lost.isEmpty()
                ? List.of(part)
                : List.of(part, new Part(Map.copyOf(lost), part.ingredients(), part.stage()));
    }

    private Part content(Part part) {
        var left = new HashMap<String, BigFraction>();
        part.properties().forEach((id, weight) -> add(id, weight, left));
        return new Part(Map.copyOf(left), part.ingredients(), part.stage());
    }

    private void add(String id, BigFraction weight, Map<String, BigFraction> left) {
        var own = lose.getOrDefault(id, BigFraction.ZERO);
        left.merge(id, weight.multiply(BigFraction.ONE.subtract(own)), BigFraction::add);
        if (own.signum() == 0) {
            loseFromSum(id, weight, left);
        }
    }

    /** A sum loses what its parts lose, however it was stated; weights in a sum are on numbers as written. */
    private void loseFromSum(String id, BigFraction weight, Map<String, BigFraction> left) {
        var property = set.property(id);
        property.sum().forEach((part, times) -> {
            var perBase = weight.multiply(times)
                    .multiply(property.unit().factor())
                    .divide(set.property(part).unit().factor());
            var lost = lose.get(part);
            if (lost == null) {
                loseFromSum(part, perBase, left);
            } else {
                left.merge(part, perBase.multiply(lost).negate(), BigFraction::add);
            }
        });
    }

    /** A bound on the cooked state as one on measures of the raw batch. */
    public Bound cooked(Bound bound, Measure wholeBatch) {
        // a share is one of the cooked weight even where the other number is a weight
        boolean shared = Stream.of(Optional.ofNullable(bound.min()), Optional.ofNullable(bound.max()))
                .flatMap(Optional::stream)
                .anyMatch(limit -> !Bound.isAmount(limit));
        var per = bound.per() == null && shared ? wholeBatch : bound.per();
        return new Bound(
                bound.kind(),
                bound.name(),
                bound.path(),
                cooked(bound.of()),
                per == null ? null : cooked(per),
                bound.min(),
                bound.max(),
                bound.state(),
                bound.origin(),
                new Bound.Written(bound.of(), bound.per()),
                bound.sure());
    }
}
