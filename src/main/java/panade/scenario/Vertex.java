package panade.scenario;

import java.util.Arrays;
import java.util.BitSet;
import org.jspecify.annotations.Nullable;

/** A basis that meets every row: its amounts, which no price changes, and the ways out of it that are known. */
final class Vertex {
    /** Below this share an ingredient is not in a blend, and a bound is touched. */
    private static final double NOTHING = 1e-9;

    private final BitSet variables;
    private final int[] columns;
    private final double[] amounts;
    private final int[] touched;
    /** By variable; filled as ways are found, by any thread, with the same way whoever finds it. */
    private final @Nullable Edge[] edges;

    private final @Nullable Inverse inverse;

    /** A way to a neighbour. */
    static final class Edge {
        private final double[] change;
        private final @Nullable Vertex to;

        Edge(double[] change, @Nullable Vertex to) {
            this.change = change;
            this.to = to;
        }

        /** What each reduced cost changes by, for each unit of the reduced cost of the variable that comes in. */
        double[] change() {
            return change;
        }

        /** The neighbour; null when there is none that is sound. */
        @Nullable
        Vertex to() {
            return to;
        }
    }

    Vertex(Geometry geometry, BitSet variables, Inverse inverse, boolean keep) {
        this.variables = variables;
        this.inverse = keep ? inverse : null;
        this.edges = new Edge[geometry.variables()];
        var amountOf = inverse.amounts();
        var used = new int[inverse.columns().length];
        int count = 0;
        for (int column : inverse.columns()) {
            if (amountOf[column] > NOTHING) {
                used[count++] = column;
            }
        }
        columns = Arrays.copyOf(used, count);
        amounts = new double[count];
        for (int i = 0; i < count; i++) {
            amounts[i] = amountOf[columns[i]];
        }
        touched = touched(geometry, amountOf);
    }

    private static int[] touched(Geometry geometry, double[] amountOf) {
        var found = new int[geometry.rows()];
        int count = 0;
        for (int row = 0; row < found.length; row++) {
            if (amountOf[geometry.columns() + row] <= NOTHING) {
                found[count++] = row;
            }
        }
        return Arrays.copyOf(found, count);
    }

    BitSet variables() {
        return variables;
    }

    /** The columns that are used, in order. */
    int[] columns() {
        return columns;
    }

    /** How much of each of {@link #columns()}. */
    double[] amounts() {
        return amounts;
    }

    /** Rows without slack, in order. */
    int[] touched() {
        return touched;
    }

    @Nullable
    Edge edge(int entering) {
        return edges[entering];
    }

    void learn(int entering, Edge edge) {
        edges[entering] = edge;
    }

    /** Kept while memory lasts. */
    @Nullable
    Inverse inverse() {
        return inverse;
    }

    double cost(double[] costs) {
        double total = 0;
        for (int i = 0; i < columns.length; i++) {
            total += costs[columns[i]] * amounts[i];
        }
        return total;
    }
}
