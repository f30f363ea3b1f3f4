package panade.certify.sensitivity;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Certificate;
import panade.certify.simplex.BasisSystem;
import panade.model.Basis;
import panade.model.LinearModel;
import panade.scenario.BasisSearch;

/**
 * Optima of one model under many objectives: each is walked to in binary floating point from one basis, solved again
 * exactly and proved by its own multipliers.
 */
final class WalkedOptima {
    private final LinearModel model;
    private final Optional<BasisSearch> search;

    /** Walks that begin at a basis which meets every row. */
    WalkedOptima(LinearModel model, Basis start) {
        this.model = model;
        this.search = BasisSearch.from(model, start);
    }

    /** A point at which an objective is the least; empty where the walk was lost or ends where nothing is proved. */
    Optional<List<BigFraction>> point(List<BigFraction> costs) {
        var question = model.withCosts(costs);
        return search.flatMap(walks -> walks.best(costs))
                .flatMap(basis -> BasisSystem.solve(question, basis))
                .filter(pair -> Certificate.provesOptimal(question, pair.point(), pair.multipliers()))
                .map(BasisSystem.Pair::point);
    }
}
