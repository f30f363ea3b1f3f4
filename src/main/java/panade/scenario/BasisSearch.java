package panade.scenario;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearModel;

/** Guesses, for one model under many objectives, which basis is best: from a basis that meets every row, by walking. */
public final class BasisSearch {
    private final Geometry geometry;
    private final Walker walker;

    private BasisSearch(Geometry geometry, Walker walker) {
        this.geometry = geometry;
        this.walker = walker;
    }

    /** A search; empty where binary floating point cannot follow the model. */
    public static Optional<BasisSearch> from(LinearModel model, Basis start) {
        var geometry = new Geometry(model);
        var graph = new BasisGraph(geometry);
        return graph.vertex(geometry.variables(start))
                .map(vertex -> new BasisSearch(geometry, new Walker(geometry, graph, vertex)));
    }

    /** The basis that seems to cost the least; empty when the walk was lost. */
    public Optional<Basis> best(List<BigFraction> costs) {
        return walker.best(costs.stream().mapToDouble(BigFraction::doubleValue).toArray())
                .map(vertex -> geometry.basis(vertex.variables()));
    }
}
