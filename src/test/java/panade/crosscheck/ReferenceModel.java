package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;

/** The same problem built from its raw numbers for another solver. */
final class ReferenceModel {
    private final RawProblem problem;
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final List<Goods> goods = new ArrayList<>();

    private record Goods(int use, RawOffer offer, Variable share) {}

    private ReferenceModel(RawProblem problem) {
        this.problem = problem;
        for (int i = 0; i < problem.uses().size(); i++) {
            addGoods(i);
        }
    }

    /** Money per kilogram of batch. */
    static double leastCost(RawProblem problem) {
        var reference = new ReferenceModel(problem);
        reference.addBatch();
        problem.bounds().forEach(reference::addBound);
        problem.ingredients().forEach(reference::addCeiling);
        problem.offers().forEach(reference::addAvailability);
        var result = reference.model.minimise();
        assertThat(result.getState().isOptimal())
                .as("reference state %s", result.getState())
                .isTrue();
        return result.getValue();
    }

    private void addGoods(int use) {
        var id = problem.uses().get(use).ingredient();
        for (var offer : problem.offers()) {
            if (offer.ingredient().equals(id)) {
                var price = offer.pricePerKg().divide(problem.ingredient(id).kept());
                var share = model.newVariable("x" + goods.size()).lower(0).weight(price.doubleValue());
                goods.add(new Goods(use, offer, share));
            }
        }
    }

    private void addBatch() {
        var all = model.newExpression("batch");
        goods.forEach(one -> all.set(one.share(), 1));
        all.level(1);
    }

    private void addBound(RawBound bound) {
        bound.min()
                .ifPresent(limit -> expression(bound.path() + "/min", bound.difference(limit))
                        .lower(bound.constant(limit).doubleValue()));
        bound.max()
                .ifPresent(limit -> expression(bound.path() + "/max", bound.difference(limit))
                        .upper(bound.constant(limit).doubleValue()));
    }

    private Expression expression(String name, List<BigFraction> form) {
        var expression = model.newExpression(name);
        goods.forEach(one -> expression.set(one.share(), form.get(one.use()).doubleValue()));
        return expression;
    }

    private void addCeiling(RawIngredient ingredient) {
        var expression = model.newExpression(ingredient.id() + " maxUse");
        goods.stream()
                .filter(one -> one.offer().ingredient().equals(ingredient.id()))
                .forEach(one -> expression.set(one.share(), 1));
        expression.upper(ingredient.maxUse().doubleValue() / 100);
    }

    private void addAvailability(RawOffer offer) {
        offer.available().ifPresent(most -> {
            var expression = model.newExpression(offer.ingredient() + " from " + offer.supplier());
            double bought = problem.batch().doubleValue()
                    / problem.ingredient(offer.ingredient()).kept().doubleValue();
            goods.stream().filter(one -> one.offer().equals(offer)).forEach(one -> expression.set(one.share(), bought));
            expression.upper(most.doubleValue());
        });
    }
}
