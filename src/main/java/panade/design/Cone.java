package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The lines and extreme rays of a cone given by rows, found by double description in whole numbers (Motzkin, Raiffa,
 * Thompson and Thrall 1953): each row in turn cuts the cone that is left, and a new ray comes up only between two rays
 * that lie side by side.
 */
final class Cone {
    private final List<List<BigInteger>> lines = new ArrayList<>();
    private final List<Ray> rays = new ArrayList<>();

    /** A direction, and which of the rows it meets with nothing to spare. */
    record Ray(List<BigInteger> direction, BitSet tight) {
        /** The rows that both meet with nothing to spare. */
        BitSet tightWith(Ray other) {
            var both = (BitSet) tight.clone();
            both.and(other.tight);
            return both;
        }
    }

    private Cone(int dimension) {
        for (int i = 0; i < dimension; i++) {
            int axis = i;
            lines.add(IntStream.range(0, dimension)
                    .mapToObj(j -> j == axis ? BigInteger.ONE : BigInteger.ZERO)
                    .toList());
        }
    }

    /**
     * The cone in which rows are not negative.
     *
     * @param rows not negative; rays tell which they meet by their place in this list
     * @param planes nought
     */
    static Cone of(int dimension, List<List<BigInteger>> rows, List<List<BigInteger>> planes) {
        var cone = new Cone(dimension);
        planes.forEach(cone::meet);
        for (int row = 0; row < rows.size(); row++) {
            cone.cut(rows.get(row), row);
        }
        return cone;
    }

    /** Directions that the cone has both ways; each other line is a sum of these. */
    List<List<BigInteger>> lines() {
        return lines;
    }

    List<Ray> rays() {
        return rays;
    }

    /**
     * Whether no third of these rays lies on all that two have in common, so that the cone has an edge between them.
     */
    static boolean sideBySide(List<Ray> all, int one, int other) {
        var common = all.get(one).tightWith(all.get(other));
        return IntStream.range(0, all.size())
                .noneMatch(third ->
                        third != one && third != other && holds(all.get(third).tight(), common));
    }

    /** Whether all of one set of numbers are in the other. */
    static boolean holds(BitSet larger, BitSet smaller) {
        var missing = (BitSet) smaller.clone();
        missing.andNot(larger);
        return missing.isEmpty();
    }

    private void meet(List<BigInteger> plane) {
        if (slide(plane).isEmpty()) {
            var kept = between(plane);
            rays.stream()
                    .filter(ray -> at(plane, ray.direction()).signum() == 0)
                    .forEach(kept::add);
            replace(kept);
        }
    }

    private void cut(List<BigInteger> row, int number) {
        var slid = slide(row);
        var kept = slid.isPresent() ? new ArrayList<Ray>() : between(row);
        for (var ray : rays) {
            int sign = at(row, ray.direction()).signum();
            if (sign >= 0) {
                kept.add(ray);
            }
        }
        for (var ray : kept) {
            ray.tight().set(number, at(row, ray.direction()).signum() == 0);
        }
        slid.ifPresent(line -> kept.add(new Ray(line, firstBits(number))));
        replace(kept);
    }

    private static BitSet firstBits(int count) {
        var bits = new BitSet();
        bits.set(0, count);
        return bits;
    }

    private void replace(List<Ray> kept) {
        rays.clear();
        rays.addAll(kept);
    }

    /**
     * Takes one line out, and slides all else along it until the row is nought there; that line, turned to where it
     * grows.
     */
    private Optional<List<BigInteger>> slide(List<BigInteger> row) {
        var found = lines.stream()
                .filter(line -> at(row, line).signum() != 0)
                .findFirst()
                .map(line -> at(row, line).signum() > 0 ? line : negated(line));
        found.ifPresent(pivot -> {
            lines.removeIf(line -> line.equals(pivot) || negated(line).equals(pivot));
            lines.replaceAll(line -> slid(line, pivot, row));
            rays.replaceAll(ray -> new Ray(slid(ray.direction(), pivot, row), ray.tight()));
        });
        return found;
    }

    private static List<BigInteger> slid(List<BigInteger> direction, List<BigInteger> pivot, List<BigInteger> row) {
        return sum(direction, at(row, pivot), pivot, at(row, direction).negate());
    }

    /** New rays on a plane, one between each two side by side that lie on either side of it. */
    private List<Ray> between(List<BigInteger> plane) {
        var values = rays.stream().map(ray -> at(plane, ray.direction())).toList();
        var found = new ArrayList<Ray>();
        for (int i = 0; i < rays.size(); i++) {
            for (int j = 0; j < rays.size() && values.get(i).signum() > 0; j++) {
                if (values.get(j).signum() < 0 && sideBySide(rays, i, j)) {
                    var direction = sum(
                            rays.get(i).direction(),
                            values.get(j).negate(),
                            rays.get(j).direction(),
                            values.get(i));
                    found.add(new Ray(direction, rays.get(i).tightWith(rays.get(j))));
                }
            }
        }
        return found;
    }

    private static List<BigInteger> negated(List<BigInteger> direction) {
        return direction.stream().map(BigInteger::negate).toList();
    }

    /** A sum of multiples, in its lowest terms. */
    private static List<BigInteger> sum(List<BigInteger> a, BigInteger times, List<BigInteger> b, BigInteger others) {
        var sum = new ArrayList<BigInteger>();
        var common = BigInteger.ZERO;
        for (int i = 0; i < a.size(); i++) {
            sum.add(a.get(i).multiply(times).add(b.get(i).multiply(others)));
            common = common.gcd(sum.get(i));
        }
        var divisor = common.max(BigInteger.ONE);
        sum.replaceAll(value -> value.divide(divisor));
        return sum;
    }

    private static BigInteger at(List<BigInteger> row, List<BigInteger> direction) {
        var sum = BigInteger.ZERO;
        for (int i = 0; i < row.size(); i++) {
            sum = sum.add(row.get(i).multiply(direction.get(i)));
        }
        return sum;
    }
}
