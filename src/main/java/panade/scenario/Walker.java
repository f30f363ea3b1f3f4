package panade.scenario;

import java.util.Arrays;
import java.util.Optional;
import panade.scenario.Vertex.Edge;

/**
 * Walks from the first basis to the best one under other costs: prices every variable once, then follows known ways, on
 * each of which the reduced costs change by a multiple of a known vector (the primal simplex method with Dantzig's
 * rule, each pivot done once for all draws). Not for use by several threads at once; the graph is.
 */
final class Walker {
    /** A walk this long goes in circles. */
    private static final int LONGEST = 300;

    private static final double ROUNDING = 1e-10;

    private final BasisGraph graph;
    private final Vertex start;
    private final int[] startColumns;
    private final double[][] startShares;
    private final double[] reduced;

    Walker(Geometry geometry, BasisGraph graph, Vertex start) {
        this.graph = graph;
        this.start = start;
        this.reduced = new double[geometry.variables()];
        var inverse = new Inverse(geometry, start.variables());
        startColumns = inverse.columns();
        startShares = new double[startColumns.length][];
        for (int i = 0; i < startColumns.length; i++) {
            startShares[i] = inverse.terms(startColumns[i]);
            startShares[i][startColumns[i]] = -1;
        }
    }

    /** The vertex of least cost; empty when the walk was lost. */
    Optional<Vertex> best(double[] costs) {
        price(costs);
        double least = -ROUNDING * largest(costs);
        Vertex at = start;
        for (int steps = 0; steps < LONGEST; steps++) {
            int entering = lowest();
            if (reduced[entering] >= least) {
                return Optional.of(at);
            }
            var edge = edge(at, entering);
            if (edge.to() == null) {
                return Optional.empty();
            }
            follow(edge.change(), reduced[entering]);
            at = edge.to();
        }
        return Optional.empty();
    }

    private Edge edge(Vertex at, int entering) {
        var known = at.edge(entering);
        return known != null ? known : graph.edge(at, entering);
    }

    private static double largest(double[] costs) {
        double largest = 0;
        for (double cost : costs) {
            largest = Math.max(largest, Math.abs(cost));
        }
        return largest;
    }

    private void price(double[] costs) {
        System.arraycopy(costs, 0, reduced, 0, costs.length);
        Arrays.fill(reduced, costs.length, reduced.length, 0);
        for (int i = 0; i < startColumns.length; i++) {
            follow(startShares[i], costs[startColumns[i]]);
        }
    }

    private void follow(double[] change, double factor) {
        for (int j = 0; j < change.length; j++) {
            reduced[j] += factor * change[j];
        }
    }

    private int lowest() {
        int best = 0;
        for (int j = 1; j < reduced.length; j++) {
            best = reduced[j] < reduced[best] ? j : best;
        }
        return best;
    }
}
