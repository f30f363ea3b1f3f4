package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The region of a few levers that a region of many amounts allows, without ever listing the corners of that. What is
 * known of it is the hull of the points found so far; the farthest point beyond each of its sides either proves the
 * side or is one more point (the convex hull method: Lassez and Lassez 1992, from memory).
 */
public final class Shadow {
    private final int levers;
    private final Farthest farthest;
    private final Set<List<BigFraction>> points = new LinkedHashSet<>();

    /** Finds where levers are farthest along a direction. */
    public interface Farthest {
        /**
         * The levers' values where their weighted sum is largest; empty where there is no point at all. It must be the
         * levers of a corner of the region of amounts, of which there are finitely many.
         *
         * @param weights of the levers; all nought asks for any point
         */
        Optional<List<BigFraction>> along(List<BigFraction> weights);
    }

    private Shadow(int levers, Farthest farthest) {
        this.levers = levers;
        this.farthest = farthest;
    }

    /** The region of the levers; empty where there is no point. */
    public static Optional<Polytope> of(int levers, Farthest farthest) {
        var start = new ArrayList<BigFraction>();
        for (int i = 0; i < levers; i++) {
            start.add(BigFraction.ZERO);
        }
        return farthest.along(start).flatMap(first -> new Shadow(levers, farthest).grownFrom(first));
    }

    private Optional<Polytope> grownFrom(List<BigFraction> first) {
        points.add(first);
        while (true) {
            var hull = hull();
            var sides = hull.rays().stream()
                    .map(ray -> side(ray.direction()))
                    .filter(this::leans)
                    .toList();
            var planes = hull.lines().stream().map(Shadow::side).toList();
            var beyond = new LinkedHashSet<List<BigFraction>>();
            sides.forEach(side -> beyond(side).ifPresent(beyond::add));
            for (var plane : planes) {
                beyond(plane).ifPresent(beyond::add);
                beyond(plane.negated()).ifPresent(beyond::add);
            }
            if (beyond.isEmpty()) {
                return Polytope.of(levers, sides, planes);
            }
            points.addAll(beyond);
        }
    }

    /** All rows that no point found so far breaks, each as its weights and then its number negated. */
    private Cone hull() {
        var rows = new ArrayList<List<BigInteger>>();
        for (var point : points) {
            var row = new ArrayList<>(point);
            row.add(BigFraction.ONE);
            rows.add(LeverRow.whole(row));
        }
        return Cone.of(levers + 1, rows, List.of());
    }

    private static LeverRow side(List<BigInteger> row) {
        var weights = row.subList(0, row.size() - 1).stream().map(BigFraction::of);
        return new LeverRow(
                weights.toList(), BigFraction.of(row.get(row.size() - 1)).negate());
    }

    private boolean leans(LeverRow side) {
        return side.weights().stream().anyMatch(weight -> weight.signum() != 0);
    }

    private Optional<List<BigFraction>> beyond(LeverRow side) {
        return farthest.along(side.negated().weights())
                .filter(point -> side.excess(point).signum() < 0);
    }
}
