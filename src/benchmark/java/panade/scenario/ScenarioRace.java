package panade.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.BriefCompiler;
import panade.document.Documents;
import panade.document.Overrides;
import panade.document.Reading;
import panade.domain.Brief;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.Basis;
import panade.solver.SolverAnswer;
import panade.solver.ortools.OrToolsSolver;
import panade.solver.ortools.WarmGlop;

/** Scratch. */
public final class ScenarioRace {
    public static LinearModel made(int n, int m, long seed) {
        var random = new Random(seed);
        var inside = new double[n];
        double sum = 0;
        for (int k = 0; k < Math.min(n, 15); k++) { int j = random.nextInt(n); double v = random.nextInt(100) + 1; inside[j] += v; sum += v; }
        var columns = new ArrayList<Column>();
        for (int j = 0; j < n; j++) columns.add(new Column("c" + j, BigFraction.of(50 + random.nextInt(2000), 100)));
        var rows = new ArrayList<Row>();
        var all = new TreeMap<Integer, BigFraction>();
        for (int j = 0; j < n; j++) all.put(j, BigFraction.ONE);
        rows.add(new Row("batch", all, Sense.EQUAL, BigFraction.ONE));
        for (int i = 1; i < m; i++) {
            var form = new TreeMap<Integer, BigFraction>();
            double at = 0;
            for (int j = 0; j < n; j++) if (random.nextInt(10) < 6) { int v = random.nextInt(1000); form.put(j, BigFraction.of(v, 100)); at += v / 100.0 * inside[j] / sum; }
            boolean most = random.nextBoolean();
            int right = (int) Math.round((most ? at * (1.01 + 0.1 * random.nextDouble()) : at * (0.99 - 0.1 * random.nextDouble())) * 1000);
            rows.add(new Row("r" + i, form, most ? Sense.AT_MOST : Sense.AT_LEAST, BigFraction.of(right, 1000)));
        }
        return new LinearModel(columns, rows);
    }

    public static void main(String[] args) {
        LinearModel model;
        List<Integer> priceOf = new ArrayList<>();
        if (args[0].endsWith(".json")) {
            var brief = ((Reading.Accepted<Brief>) Documents.readBrief(Path.of(args[0]), Overrides.NONE)).value();
            var compiled = BriefCompiler.compile(brief);
            model = compiled.model();
            for (var source : compiled.columns()) priceOf.add(brief.offers().indexOf(source.offer()));
        } else {
            model = made(Integer.parseInt(args[0]), Integer.parseInt(args[1]), 7);
            for (int j = 0; j < model.columns().size(); j++) priceOf.add(j);
        }
        int prices = 1 + priceOf.stream().mapToInt(x -> x).max().orElse(0);
        Basis start = ((SolverAnswer.Optimal) new OrToolsSolver().solve(model, java.time.Duration.ofSeconds(10))).basis();
        System.out.println("columns " + model.columns().size() + " rows " + model.rows().size() + " basic columns " + start.columns().size());
        for (int percent : new int[] {10, 30}) {
            var spreads = java.util.Collections.nCopies(prices, BigFraction.of(percent, 100));
            var sm = new ScenarioModel(model, start, priceOf, java.util.Collections.nCopies(priceOf.size(), 0), new PriceDraws(1, spreads));
            int[] rescued = {0};
            var scenarios = new Scenarios(sm, costs -> { rescued[0]++; return ((SolverAnswer.Optimal) new OrToolsSolver().solve(model.withCosts(costs), java.time.Duration.ofSeconds(10))).basis(); });
            int g = 20000;
            for (int round = 0; round < 3; round++) {
                long draws = Long.parseLong(args[args.length - 1]);
                long t0 = System.nanoTime();
                var d1 = scenarios.run(draws, 1);
                long t1 = System.nanoTime();
                var d2 = scenarios.run(draws, 2);
                long t2 = System.nanoTime();
                double worst = 0;
                try (var glop = new WarmGlop(model)) {
                    var drawn = new Drawn(sm);
                    double[] costs = new double[g];
                    for (int i = 0; i < g; i++) { drawn.draw(i); costs[i] = glop.leastCost(drawn.costs()); }
                    long t3 = System.nanoTime();
                    var walker = new Walker(new Geometry(model), new BasisGraph(new Geometry(model)), new BasisGraph(new Geometry(model)).vertex(new Geometry(model).variables(start)).orElseThrow());
                    if (round == 0) for (int i = 0; i < g; i++) { drawn.draw(i); var v = walker.best(drawn.costs()); if (v.isPresent()) worst = Math.max(worst, Math.abs(v.get().cost(drawn.costs()) - costs[i])); }
                    double r1 = draws / ((t1 - t0) * 1e-9), r2 = draws / ((t2 - t1) * 1e-9), rg = g / ((t3 - t2) * 1e-9);
                    System.out.printf("+-%d%% ours 1 thread %.0f/s, 2 threads %.0f/s, GLOP %.0f/s: ratio %.1f, %.1f; rescued %d; worst diff %.2e; same %b; mean %.6f heap %d MB%n", percent, r1, r2, rg, r1 / rg, r2 / rg, rescued[0], worst,
                        d1.mean().equals(d2.mean()) && d1.deviation().equals(d2.deviation()) && d1.touched(3)==d2.touched(3), d1.mean().doubleValue(), (Runtime.getRuntime().totalMemory()-Runtime.getRuntime().freeMemory())>>20);
                }
            }
        }
    }
}
