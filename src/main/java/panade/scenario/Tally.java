package panade.scenario;

import java.util.List;

/**
 * What is counted over the draws, in whole numbers only: adding them up in another order, or in several threads, gives
 * the same. Its size does not grow with the number of draws.
 */
final class Tally {
    /** Grains of cost in today's least cost. */
    static final int GRAINS = 1 << 24;

    /** Bins of the histogram of cost, each a thousand grains wide: six thousandths of a per cent of today's cost. */
    static final int BIN = 1 << 10;

    static final int BINS = 2 * GRAINS / BIN;

    /** Grains of share in the whole batch. */
    static final double SHARES = 1e9;

    /** Which sums of the cost's difference from today's. */
    static final int DIFFERENCE = 0;

    static final int SQUARE = 1;

    final long[] bins = new long[BINS];
    final Sums costs = new Sums(2);
    final Sums used;
    final Sums shares;
    final Sums touched;
    final Sums products;
    final Sums regrets;
    final long[] worst;
    final Sums met = new Sums(1);
    final Extreme least = new Extreme(-1);
    final Extreme most = new Extreme(1);
    private final int[] groupOf;
    private final double base;
    private final double target;
    private final double grain;
    private final List<Vertex> candidates;
    private final boolean[] seen;

    /**
     * An empty tally.
     *
     * @param base today's least cost
     * @param target a cost that is hoped for; not a number for none
     * @param candidates blends that are kept whatever the prices
     */
    Tally(ScenarioModel model, double base, double target, List<Vertex> candidates) {
        this.base = base;
        this.target = target;
        this.grain = base > 0 ? base / GRAINS : 1;
        this.candidates = candidates;
        this.groupOf = model.groupOf().stream().mapToInt(Integer::intValue).toArray();
        this.used = new Sums(model.groups());
        this.shares = new Sums(model.groups());
        this.touched = new Sums(model.model().rows().size());
        this.products = new Sums(model.draws().count());
        this.regrets = new Sums(candidates.size());
        this.worst = new long[candidates.size()];
        this.seen = new boolean[model.groups()];
    }

    double base() {
        return base;
    }

    double grain() {
        return grain;
    }

    /** A cost as a number of grains above today's. */
    long grains(double cost) {
        return Math.round((cost - base) / grain);
    }

    void add(long draw, Drawn drawn, Vertex best) {
        double cost = best.cost(drawn.costs());
        met.running()[0] += cost <= target ? 1 : 0;
        long difference = grains(cost);
        costs.running()[DIFFERENCE] += difference;
        costs.running()[SQUARE] += difference * difference;
        bins[(int) Math.max(0, Math.min(BINS - 1L, (difference + GRAINS) / BIN))]++;
        least.see(draw, difference);
        most.see(draw, difference);
        var products = this.products.running();
        var steps = drawn.steps();
        for (int price = 0; price < steps.length; price++) {
            products[price] += difference * steps[price];
        }
        count(best);
        compare(drawn, difference);
    }

    private void count(Vertex best) {
        var columns = best.columns();
        for (int i = 0; i < columns.length; i++) {
            int group = groupOf[columns[i]];
            shares.running()[group] += Math.round(best.amounts()[i] * SHARES);
            used.running()[group] += seen[group] ? 0 : 1;
            seen[group] = true;
        }
        for (int column : columns) {
            seen[groupOf[column]] = false;
        }
        for (int row : best.touched()) {
            touched.running()[row]++;
        }
    }

    private void compare(Drawn drawn, long difference) {
        for (int i = 0; i < worst.length; i++) {
            long regret = Math.max(0, grains(candidates.get(i).cost(drawn.costs())) - difference);
            regrets.running()[i] += regret;
            worst[i] = Math.max(worst[i], regret);
        }
    }

    /** To be called every {@link Scenarios#BLOCK} draws, before a running sum is full. */
    void carry() {
        for (var sums : List.of(costs, used, shares, touched, products, regrets, met)) {
            sums.carry();
        }
    }

    void add(Tally other) {
        costs.add(other.costs);
        used.add(other.used);
        shares.add(other.shares);
        touched.add(other.touched);
        products.add(other.products);
        regrets.add(other.regrets);
        met.add(other.met);
        least.see(other.least.draw(), other.least.value());
        most.see(other.most.draw(), other.most.value());
        for (int i = 0; i < worst.length; i++) {
            worst[i] = Math.max(worst[i], other.worst[i]);
        }
        for (int i = 0; i < BINS; i++) {
            bins[i] += other.bins[i];
        }
    }

    /** The lowest or highest cost and the first draw that had it. */
    static final class Extreme {
        private final int sign;
        private long value;
        private long draw = -1;

        Extreme(int sign) {
            this.sign = sign;
        }

        void see(long number, long found) {
            boolean beyond = sign * Long.compare(found, value) > 0;
            boolean first = draw < 0 || beyond || (found == value && number < draw);
            if (number >= 0 && first) {
                value = found;
                draw = number;
            }
        }

        long value() {
            return value;
        }

        long draw() {
            return draw;
        }
    }
}
