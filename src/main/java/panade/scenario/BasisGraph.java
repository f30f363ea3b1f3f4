package panade.scenario;

import java.util.BitSet;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import panade.scenario.Vertex.Edge;

/**
 * The bases met so far and the ways between them. It forgets nothing and stops learning when its share of memory is
 * full; then what is not known is worked out each time, with the same result.
 */
final class BasisGraph {
    private static final long BYTES_OF_A_NUMBER = 8;
    private static final long LARGEST = 240L << 20;

    private final Geometry geometry;
    private final ConcurrentMap<BitSet, Vertex> known = new ConcurrentHashMap<>();
    private final AtomicLong room;
    private final AtomicLong roomForInverses;

    BasisGraph(Geometry geometry) {
        this.geometry = geometry;
        long share = Math.min(LARGEST, Runtime.getRuntime().maxMemory() / 2);
        room = new AtomicLong(share / 3 * 2);
        roomForInverses = new AtomicLong(share / 3);
    }

    /** The vertex of a basis; empty when the basis is none that meets every row. */
    Optional<Vertex> vertex(BitSet variables) {
        var found = known.get(variables);
        return found != null ? Optional.of(found) : learnt(variables);
    }

    private Optional<Vertex> learnt(BitSet variables) {
        var inverse = new Inverse(geometry, variables);
        if (!inverse.isSound()) {
            return Optional.empty();
        }
        if (!takes(room, geometry.variables() * 2L)) {
            return Optional.of(new Vertex(geometry, variables, inverse, true));
        }
        int size = inverse.columns().length;
        boolean keep = takes(roomForInverses, (long) size * size + geometry.variables());
        var vertex = new Vertex(geometry, variables, inverse, keep);
        return Optional.of(Objects.requireNonNullElse(known.putIfAbsent(variables, vertex), vertex));
    }

    private static boolean takes(AtomicLong room, long numbers) {
        return room.get() > 0 && room.addAndGet(-numbers * BYTES_OF_A_NUMBER) > 0;
    }

    /** The way out of a vertex on which a variable comes in. */
    Edge edge(Vertex from, int entering) {
        var edge = from.edge(entering);
        if (edge != null) {
            return edge;
        }
        var found = found(from, entering);
        if (takes(room, geometry.variables())) {
            from.learn(entering, found);
        }
        return found;
    }

    private Edge found(Vertex from, int entering) {
        var inverse = Objects.requireNonNullElseGet(from.inverse(), () -> new Inverse(geometry, from.variables()));
        int leaving = inverse.leaving(entering);
        if (leaving < 0) {
            return new Edge(new double[0], null);
        }
        var variables = (BitSet) from.variables().clone();
        variables.clear(leaving);
        variables.set(entering);
        return new Edge(inverse.exchange(leaving, entering), orNull(vertex(variables)));
    }

    private static @Nullable Vertex orNull(Optional<Vertex> vertex) {
        return vertex.orElse(null);
    }
}
