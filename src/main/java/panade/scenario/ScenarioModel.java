package panade.scenario;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.LinearModel;

/**
 * A model whose columns follow prices that are drawn.
 *
 * @param model the rows, and the costs at today's prices
 * @param optimum the basis of least cost at today's prices
 * @param priceOf by column, the number of the price that its cost is in proportion to
 * @param groupOf by column, the number of the group that it is counted with
 * @param draws the prices
 */
public record ScenarioModel(
        LinearModel model, Basis optimum, List<Integer> priceOf, List<Integer> groupOf, PriceDraws draws) {
    public ScenarioModel {
        priceOf = List.copyOf(priceOf);
        groupOf = List.copyOf(groupOf);
    }

    /** How many groups there are. */
    int groups() {
        return 1 + groupOf.stream().mapToInt(Integer::intValue).max().orElse(-1);
    }

    /** The costs of one draw, exactly. */
    public List<BigFraction> costs(long draw) {
        var steps = new int[draws.count()];
        draws.steps(draw, steps);
        var costs = new ArrayList<BigFraction>();
        for (int j = 0; j < model.columns().size(); j++) {
            int price = priceOf.get(j);
            costs.add(model.columns().get(j).cost().multiply(draws.factor(price, steps[price])));
        }
        return costs;
    }

    /** The costs at today's prices. */
    double[] today() {
        return model.columns().stream()
                .mapToDouble(column -> column.cost().doubleValue())
                .toArray();
    }
}
