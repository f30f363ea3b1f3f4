package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Optimisation.State;
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
        var result = limited(problem).model.minimise();
        assertThat(result.getState().isOptimal())
                .as("reference state %s", result.getState())
                .isTrue();
        return result.getValue();
    }

    private static ReferenceModel limited(RawProblem problem) {
        var reference = new ReferenceModel(problem);
        reference.addBatch();
        problem.bounds().forEach(reference::addBound);
        problem.ingredients().forEach(reference::addCeiling);
        problem.offers().forEach(reference::addAvailability);
        return reference;
    }

    /** The least cost where every line but those of some ingredients is as made; empty where no blend is left. */
    static OptionalDouble leastCostChanging(RawProblem problem, List<BigFraction> made, Set<String> changing) {
        var reference = limited(problem);
        for (int i = 0; i < made.size(); i++) {
            if (!changing.contains(problem.uses().get(i).ingredient())) {
                reference.line(i, "kept " + i).level(made.get(i).doubleValue());
            }
        }
        return value(reference.model.minimise());
    }

    /** The least cost where half the absolute changes of lines together are no more than that. */
    static OptionalDouble leastCostMoving(RawProblem problem, List<BigFraction> made, double most) {
        var reference = limited(problem);
        reference.addMoves(made, 0).upper(most);
        return value(reference.model.minimise());
    }

    /** The least that half the absolute changes of lines together must be; empty where there is no blend at all. */
    static OptionalDouble leastMoved(RawProblem problem, List<BigFraction> made) {
        var reference = limited(problem);
        reference.goods.forEach(one -> one.share().weight(0));
        reference.addMoves(made, 0.5);
        return value(reference.model.minimise());
    }

    /**
     * The same where an ingredient is used as little as a floor or not at all, and lines outside a set are as made.
     *
     * @param used ids of what is used
     * @param floor share of the batch of each
     */
    static OptionalDouble leastCostUsing(
            RawProblem problem,
            List<BigFraction> made,
            double most,
            Set<String> used,
            double floor,
            Set<String> changing) {
        var reference = limited(problem);
        reference.addMoves(made, 0).upper(most);
        for (var ingredient : problem.ingredients()) {
            var share = reference.model.newExpression(ingredient.id() + " used");
            reference.goods.stream()
                    .filter(one -> one.offer().ingredient().equals(ingredient.id()))
                    .forEach(one -> share.set(one.share(), 1));
            if (used.contains(ingredient.id())) {
                share.lower(floor);
            } else {
                share.upper(0);
            }
        }
        for (int i = 0; i < made.size(); i++) {
            if (!changing.contains(problem.uses().get(i).ingredient())) {
                reference.line(i, "kept " + i).level(made.get(i).doubleValue());
            }
        }
        return value(reference.model.minimise());
    }

    private static OptionalDouble value(Optimisation.Result result) {
        assertThat(result.getState()).isIn(State.OPTIMAL, State.DISTINCT, State.INFEASIBLE);
        return result.getState().isOptimal() ? OptionalDouble.of(result.getValue()) : OptionalDouble.empty();
    }

    /** A rise and a fall for each line; half of both together. */
    private Expression addMoves(List<BigFraction> made, double weight) {
        var moved = model.newExpression("moved");
        for (int i = 0; i < made.size(); i++) {
            var rise = model.newVariable("rise " + i).lower(0).weight(weight);
            var fall = model.newVariable("fall " + i).lower(0).weight(weight);
            line(i, "change " + i).set(rise, -1).set(fall, 1).level(made.get(i).doubleValue());
            moved.set(rise, 0.5).set(fall, 0.5);
        }
        return moved;
    }

    private Expression line(int use, String name) {
        var line = model.newExpression(name);
        goods.stream().filter(one -> one.use() == use).forEach(one -> line.set(one.share(), 1));
        return line;
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
