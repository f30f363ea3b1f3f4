package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A bounded region that rows leave of the values of levers, by its corners: exact, none missing. These and the points
 * half way between them are where trials teach most of a mixture (McLean and Anderson 1966).
 */
public final class Polytope {
    private final List<Cone.Ray> corners;
    private final int sides;

    private Polytope(List<Cone.Ray> corners, int sides) {
        this.corners = corners;
        this.sides = sides;
    }

    /**
     * The region where every row of one list is at least its number, and every row of another is just that; empty where
     * there is no such point.
     *
     * @throws IllegalArgumentException if the region goes on for ever
     */
    public static Optional<Polytope> of(int levers, List<LeverRow> atLeast, List<LeverRow> equal) {
        var rows = new ArrayList<List<BigInteger>>();
        atLeast.forEach(row -> rows.add(row.homogeneous()));
        rows.add(LeverRow.whole(point(levers, BigFraction.ONE)));
        var cone = Cone.of(
                levers + 1, rows, equal.stream().map(LeverRow::homogeneous).toList());
        var corners = cone.rays().stream().filter(ray -> last(ray).signum() > 0).toList();
        if (corners.isEmpty()) {
            return Optional.empty();
        }
        if (corners.size() < cone.rays().size() || !cone.lines().isEmpty()) {
            throw new IllegalArgumentException("The region has no end in some direction.");
        }
        return Optional.of(new Polytope(corners, atLeast.size()));
    }

    private static List<BigFraction> point(int levers, BigFraction last) {
        var point = new ArrayList<>(Collections.nCopies(levers, BigFraction.ZERO));
        point.add(last);
        return point;
    }

    private static BigInteger last(Cone.Ray ray) {
        return ray.direction().get(ray.direction().size() - 1);
    }

    private static List<BigFraction> point(Cone.Ray ray) {
        return ray.direction().subList(0, ray.direction().size() - 1).stream()
                .map(value -> BigFraction.of(value, last(ray)))
                .toList();
    }

    /** The corners. */
    public List<List<BigFraction>> vertices() {
        return corners.stream().map(Polytope::point).toList();
    }

    /** The middle of each edge. */
    public List<List<BigFraction>> edgeMidpoints() {
        var middles = new ArrayList<List<BigFraction>>();
        for (int i = 0; i < corners.size(); i++) {
            for (int j = i + 1; j < corners.size(); j++) {
                if (Cone.sideBySide(corners, i, j)) {
                    middles.add(mean(List.of(point(corners.get(i)), point(corners.get(j)))));
                }
            }
        }
        return middles;
    }

    /** The mean of the corners of each facet, the sides that have one dimension less than the region itself. */
    public List<List<BigFraction>> facetCentroids() {
        var faces = IntStream.range(0, sides)
                .mapToObj(this::cornersOn)
                .filter(face -> !face.isEmpty() && face.cardinality() < corners.size())
                .distinct()
                .toList();
        return faces.stream()
                .filter(face -> faces.stream().noneMatch(other -> !other.equals(face) && Cone.holds(other, face)))
                .map(face -> mean(face.stream()
                        .mapToObj(corner -> point(corners.get(corner)))
                        .toList()))
                .toList();
    }

    private BitSet cornersOn(int side) {
        var on = new BitSet();
        for (int i = 0; i < corners.size(); i++) {
            on.set(i, corners.get(i).tight().get(side));
        }
        return on;
    }

    /** The mean of all corners. */
    public List<BigFraction> centroid() {
        return mean(vertices());
    }

    /** Corners, edges, facets and the middle: each point once. */
    public List<List<BigFraction>> candidates() {
        var all = new LinkedHashSet<>(vertices());
        all.addAll(edgeMidpoints());
        all.addAll(facetCentroids());
        all.add(centroid());
        return List.copyOf(all);
    }

    private static List<BigFraction> mean(List<List<BigFraction>> points) {
        return IntStream.range(0, points.get(0).size())
                .mapToObj(lever -> points.stream()
                        .map(point -> point.get(lever))
                        .reduce(BigFraction.ZERO, BigFraction::add)
                        .divide(points.size()))
                .toList();
    }
}
