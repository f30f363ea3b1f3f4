package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Prover;
import panade.certify.Verdict.Optimum;
import panade.compile.BriefCompiler;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Practice;
import panade.domain.Side;
import panade.explain.Explanation.Limit;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Quantity;
import panade.quantity.Unit;
import panade.solver.ortools.OrToolsSolver;
import panade.testing.Planners;

/**
 * Cost per cooked weight against the linear program of Charnes and Cooper (Naval Research Logistics Quarterly 9, 1962),
 * which panade itself does not solve: it takes the cost off each cooked kilogram until nothing is gained.
 */
class CookedTest {
    private static final Planner PLANNER = Planners.LINEAR;
    private static final BigFraction STEP = BigFraction.of(BigInteger.ONE, BigInteger.TEN.pow(24));
    private static final BigFraction NEAR = BigFraction.of(1, 1000);

    @Provide
    Arbitrary<RawProblem> problems() {
        return RandomKitchen.problems();
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void the_least_cost_per_cooked_weight_is_that_of_charnes_and_cooper(
            @ForAll("problems") RawProblem problem, @ForAll long seed) {
        var brief = cooked(Answer.blended(problem, new OrToolsSolver()).brief(), new Random(seed));
        var blended = (Blended) PLANNER.plan(brief);
        assertThat(blended.blend().costPerKg()).isEqualTo(charnesCooper(brief));
        var raw = PLANNER.cheapest(raw(brief)).orElseThrow();
        assertThat(raw.rawCostPerKg().subtract(blended.blend().rawCostPerKg()).signum())
                .isNotPositive();
        Statistics.label("another blend than the cheapest raw")
                .collect(!raw.lines().equals(blended.blend().lines()));
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void rates_are_those_of_the_cost_per_cooked_weight(@ForAll("problems") RawProblem problem, @ForAll long seed) {
        var brief = cooked(Answer.blended(problem, new OrToolsSolver()).brief(), new Random(seed));
        var blended = (Blended) PLANNER.answer(brief);
        if (!blended.explanation().unique()) {
            return;
        }
        for (var limit : blended.explanation().limits()) {
            if (limit.touch() == Side.MIN || limit.touch() == Side.MAX) {
                brief.bounds().stream()
                        .filter(bound -> bound.path().equals(limit.path()))
                        .findFirst()
                        .ifPresent(bound -> assertRate(blended, bound, limit));
            }
        }
    }

    private static void assertRate(Blended blended, Bound bound, Limit limit) {
        var rate = Objects.requireNonNull(limit.price()).whenRaised();
        var old = Objects.requireNonNull(limit.touch() == Side.MIN ? bound.min() : bound.max());
        if (rate == null || !old.unit().equals(limit.unit())) {
            return;
        }
        var number = Quantity.of(old.number().add(STEP), old.unit(), "raised");
        var moved = limit.touch() == Side.MIN
                ? bound.withLimits(number, bound.max())
                : bound.withLimits(bound.min(), number);
        PLANNER.cheapest(blended.brief().replacing(bound, moved)).orUndecided().ifPresent(after -> {
            var seen = after.costPerKg().subtract(blended.blend().costPerKg()).divide(STEP);
            var allowed = rate.abs().add(NEAR).multiply(NEAR);
            assertThat(seen.subtract(rate).abs().subtract(allowed).signum())
                    .as("%s: %s against %s", bound.name(), rate.doubleValue(), seen.doubleValue())
                    .isNotPositive();
        });
    }

    /** Each ingredient keeps between a half and all of its weight. */
    private static Brief cooked(Brief brief, Random random) {
        var kept = new HashMap<String, BigFraction>();
        brief.candidates().stream().sorted().forEach(id -> kept.put(id, BigFraction.of(50 + random.nextInt(51), 100)));
        var weight = new Measure("cooked", Unit.PERCENT, List.of(new Measure.Part(Map.of(), kept, null)));
        return with(brief, new Practice(List.of(), Map.of(), true, weight, null, null, null, null, null));
    }

    private static Brief raw(Brief brief) {
        return with(brief, new Practice(List.of(), Map.of(), false, null, null, null, null, null, null));
    }

    private static Brief with(Brief brief, Practice practice) {
        return new Brief(
                brief.title(),
                brief.file(),
                brief.set(),
                brief.composition(),
                brief.currency(),
                brief.batch(),
                brief.candidates(),
                brief.offers(),
                brief.otherOffers(),
                brief.bounds(),
                brief.stages(),
                brief.target(),
                practice,
                brief.exclusions(),
                brief.remarks(),
                brief.notes());
    }

    /** The least cost when amounts are counted per cooked kilogram, with the batch as one variable more. */
    private static BigFraction charnesCooper(Brief brief) {
        var compiled = BriefCompiler.compile(brief);
        int batch = compiled.columns().size();
        var columns = new ArrayList<>(compiled.model().columns());
        columns.add(new Column("batch", BigFraction.ZERO));
        var rows = new ArrayList<Row>();
        for (var row : compiled.model().rows()) {
            var terms = row.form().plus(batch, row.right().negate());
            rows.add(new Row(row.name(), terms, row.sense(), BigFraction.ZERO));
        }
        var weight = Objects.requireNonNull(brief.practice().cookedWeight());
        rows.add(new Row("cooked", compiled.formOf(weight, brief.composition()), Sense.EQUAL, BigFraction.ONE));
        var model = new LinearModel(columns, rows);
        return model.costAt(((Optimum) Prover.EXACT.prove(model)).point());
    }
}
