package panade.scenario;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.BriefCompiler;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.solver.SolverAnswer;
import panade.solver.ortools.OrToolsSolver;

/** Models to measure with: the demo's, and made-up blends of any size that can be met. */
final class MadeModel {
    static final String DEMO = "demo";

    private MadeModel() {}

    /** A model whose every price may be off by some per cent: the demo, or COLUMNSxROWS. */
    static ScenarioModel named(String name, int percent) {
        return name.equals(DEMO) ? demo(percent) : varied(linear(name), percent);
    }

    /** The blend of a name such as {@code 120x30}. */
    static LinearModel linear(String name) {
        var size = name.split("x");
        return made(Integer.parseInt(size[0]), Integer.parseInt(size[1]), new Random(7));
    }

    private static ScenarioModel demo(int percent) {
        var reading = Documents.readBrief(Path.of("constraints", "dumpling-filling.json"), Overrides.NONE);
        var brief = ((Reading.Accepted<Brief>) reading).value();
        var compiled = BriefCompiler.compile(brief);
        var priceOf = compiled.columns().stream()
                .map(source -> brief.offers().indexOf(source.offer()))
                .toList();
        return scenario(compiled.model(), priceOf, brief.offers().size(), percent);
    }

    private static ScenarioModel varied(LinearModel model, int percent) {
        var priceOf = new ArrayList<Integer>();
        for (int j = 0; j < model.columns().size(); j++) {
            priceOf.add(j);
        }
        return scenario(model, priceOf, priceOf.size(), percent);
    }

    private static ScenarioModel scenario(LinearModel model, List<Integer> priceOf, int prices, int percent) {
        var answer = new OrToolsSolver().solve(model, Duration.ofMinutes(1));
        var draws = new PriceDraws(1, Collections.nCopies(prices, BigFraction.of(percent, 100)));
        return new ScenarioModel(model, ((SolverAnswer.Optimal) answer).basis(), priceOf, priceOf, draws);
    }

    /** Rows drawn around a blend of at most fifteen ingredients, which meets them all with a little to spare. */
    private static LinearModel made(int count, int rowCount, Random random) {
        var blend = new double[count];
        double total = 0;
        for (int k = 0; k < Math.min(count, 15); k++) {
            double amount = random.nextInt(100) + 1;
            blend[random.nextInt(count)] += amount;
            total += amount;
        }
        var columns = new ArrayList<Column>();
        var all = new TreeMap<Integer, BigFraction>();
        for (int j = 0; j < count; j++) {
            columns.add(new Column("c" + j, BigFraction.of(50 + random.nextInt(2000), 100)));
            all.put(j, BigFraction.ONE);
        }
        var rows = new ArrayList<>(List.of(new Row("batch", all, Sense.EQUAL, BigFraction.ONE)));
        for (int i = 1; i < rowCount; i++) {
            rows.add(row(random, blend, total));
        }
        return new LinearModel(columns, rows);
    }

    private static Row row(Random random, double[] blend, double total) {
        var form = new TreeMap<Integer, BigFraction>();
        double activity = 0;
        for (int j = 0; j < blend.length; j++) {
            if (random.nextInt(10) < 6) {
                int value = random.nextInt(1000);
                form.put(j, BigFraction.of(value, 100));
                activity += value / 100.0 * blend[j] / total;
            }
        }
        boolean most = random.nextBoolean();
        double room = 0.01 + 0.1 * random.nextDouble();
        int right = (int) Math.round(activity * (most ? 1 + room : 1 - room) * 1000);
        return new Row("row", form, most ? Sense.AT_MOST : Sense.AT_LEAST, BigFraction.of(right, 1000));
    }
}
