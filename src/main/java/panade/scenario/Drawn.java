package panade.scenario;

/** One draw at a time, in arrays that are used again: how far each price is off, and what each column costs then. */
final class Drawn {
    private final ScenarioModel model;
    private final double[] today;
    private final double[] widths;
    private final int[] priceOf;
    private final int[] steps;
    private final double[] factors;
    private final double[] costs;

    Drawn(ScenarioModel model) {
        this.model = model;
        this.today = model.today();
        this.widths = model.draws().widths();
        this.priceOf = model.priceOf().stream().mapToInt(Integer::intValue).toArray();
        this.steps = new int[widths.length];
        this.factors = new double[widths.length];
        this.costs = new double[today.length];
    }

    void draw(long number) {
        model.draws().steps(number, steps);
        for (int price = 0; price < factors.length; price++) {
            factors[price] = 1 + widths[price] * steps[price] / PriceDraws.STEPS;
        }
        for (int j = 0; j < costs.length; j++) {
            costs[j] = today[j] * factors[priceOf[j]];
        }
    }

    int[] steps() {
        return steps;
    }

    double[] costs() {
        return costs;
    }
}
