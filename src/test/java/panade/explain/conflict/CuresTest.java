package panade.explain.conflict;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import panade.assemble.NoBlendResults;
import panade.certify.Prover;
import panade.certify.Verdict;
import panade.compile.BriefCompiler;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Member;
import panade.explain.conflict.Conflict.Relaxation;
import panade.export.ResultJson;
import panade.model.Cone;
import panade.model.LinearModel;
import panade.model.MixedModel;
import panade.plan.Contradiction;
import panade.plan.Outcome.Conflicted;
import panade.plan.Planner;
import panade.quantity.Decimal;
import panade.render.TextRenderer;
import panade.report.blend.ConflictReport;
import panade.solver.Deadline;
import panade.testing.Planners;

/** Cures of small kitchens, all invented, with every figure worked out by hand. */
class CuresTest {
    private static final Planner PLANNER = Planners.FULL;

    @TempDir
    Path folder;

    /**
     * With the rule either a and c (fat at most 10 %) or b and c. Protein: b 1/16 gives 15 % fat, protein 28.75 %. Fat:
     * a and c half each give 55 % protein, 5 % fat. Without the rule both bounds bind: b 5/38, c 12/38, cost 4 - 41/38.
     */
    @Test
    void aCureHoldsUnderTheRulesOfTheBrief() throws IOException {
        var conflict = conflict("""
                {"id": "a", "values": {"PROCNT": 80, "FAT": 0}, "others": 0},
                {"id": "b", "values": {"PROCNT": 10, "FAT": 90}, "others": 0},
                {"id": "c", "values": {"PROCNT": 30, "FAT": 10}, "others": 0}""", "a,s,4,kg\nb,s,3,kg\nc,s,1,kg\n", """
                "bounds": [{"property": "PROCNT", "min": "55 %"}, {"property": "FAT", "min": "15 %"}],
                "rules": [{"neverTogether": ["a", "b"]}]""");
        assertThat(numbers(conflict))
                .containsOnly(
                        Map.entry("/bounds/0/min", Decimal.of("28.75")), Map.entry("/bounds/1/min", Decimal.of("5")));
        assertThat(costs(conflict))
                .containsOnly(
                        Map.entry("/bounds/0/min", Decimal.of("1.125")),
                        Map.entry("/bounds/1/min", Decimal.of("2.5")),
                        Map.entry("/rules/0", BigFraction.of(111, 38)));
    }

    /** Half of it is water and a fifth of that is lost: 2.00 a kilogram raw is 2.00/0.9 cooked. */
    @Test
    void aCureIsPricedInTheBasisOfTheBrief() throws IOException {
        var conflict = conflict(
                "{\"id\": \"a\", \"values\": {\"WATER\": 50, \"PROCNT\": 40}, \"others\": 0}", "a,s,2,kg\n", """
                "costBasis": "cooked", "cooking": {"lose": {"WATER": "20 %"}},
                "bounds": [{"property": "PROCNT", "min": "50 %"}]""");
        assertThat(costs(conflict)).containsExactly(Map.entry("/bounds/0/min", BigFraction.of(20, 9)));
    }

    /** Protein of 54 % leaves a tenth for fat, of 50 % a sixth: 16.6667 % and 16.6666 % are both no blend. */
    @ParameterizedTest
    @CsvSource({"54,/bounds/1,10,10 %", "50,/bounds/1/min,16.6666,16.6666 % to 20 %"})
    void aFixedNumberIsToldExactlyOrOpenedOnOneSide(int protein, String path, String to, String words)
            throws IOException {
        var conflicted = conflicted(
                """
                {"id": "lean", "values": {"PROCNT": 60, "FAT": 0}, "others": 0},
                {"id": "fat", "values": {"PROCNT": 0, "FAT": 100}, "others": 0}""",
                "lean,s,2,kg\nfat,s,3,kg\n",
                "\"bounds\": [{\"property\": \"PROCNT\", \"min\": \"" + protein
                        + " %\"}, {\"name\": \"greasy\", \"property\": \"FAT\", \"min\": \"20 %\", \"max\": \"20 %\"}]");
        assertThat(numbers(conflicted.conflict())).containsEntry(path, Decimal.of(to));
        assertThat(TextRenderer.render(ConflictReport.of(NoBlendResults.of(conflicted))))
                .containsPattern("greasy +20 % +" + words.replace(".", "\\."));
    }

    /**
     * Half water over half starch is 1; whichever name comes first, filler in its place leaves nothing to divide by.
     */
    @ParameterizedTest
    @CsvSource({"a-filler,z-starch", "z-filler,a-starch"})
    void theCureOfARatioDoesNotDependOnTheOrderOfNames(String filler, String starch) throws IOException {
        var conflict = conflict(
                "{\"id\": \"water\", \"values\": {}}, {\"id\": \"" + filler + "\", \"values\": {}}, {\"id\": \""
                        + starch + "\", \"values\": {}}",
                "water,s,1,kg\n" + filler + ",s,1,kg\n" + starch + ",s,1,kg\n",
                "\"bounds\": [{\"ingredient\": \"water\", \"min\": \"50 %\"}, {\"ingredient\": \"water\", \"per\": {\"ingredient\": \""
                        + starch + "\"}, \"max\": 0}]");
        assertThat(numbers(conflict)).containsEntry("/bounds/1/max", BigFraction.ONE);
    }

    private static final String FOUR_WISHES = """
            "bounds": [{"name": "much a", "ingredient": "a", "min": "60 %"}, {"name": "little a", "ingredient": "a", "max": "40 %"},
                       {"name": "much b", "ingredient": "b", "min": "30 %"}, {"name": "little b", "ingredient": "b", "max": "10 %"}]""";

    /** As parts of the numbers, 60 to 40 is less than 40 to 60, and 30 to 10 less than 10 to 30: 0.4 + 0.2 + 1.5. */
    @Test
    void twoConflictsAreCountedAndCuredTogether() throws IOException {
        var conflicted = fourWishes();
        var conflict = conflicted.conflict();
        assertThat(conflict.separate()).isEqualTo(2);
        assertThat(conflict.sets().get(0)).noneMatch(Member::frees);
        assertThat(conflict.cures()).isEmpty();
        assertThat(conflict.combined().stream().collect(Collectors.toMap(Relaxation::path, CuresTest::number)))
                .containsOnly(
                        Map.entry("/bounds/0/min", BigFraction.of(40)), Map.entry("/bounds/2/min", BigFraction.of(10)));
        assertThat(Objects.requireNonNull(conflict.combinedCost()).perKg()).isEqualTo(Decimal.of("2.1"));
        assertThat(TextRenderer.render(ConflictReport.of(NoBlendResults.of(conflicted))))
                .contains("--conflicts 2")
                .doesNotContain("the rest can");
    }

    private Conflicted fourWishes() throws IOException {
        return conflicted(
                "{\"id\": \"a\", \"values\": {}}, {\"id\": \"b\", \"values\": {}}, {\"id\": \"c\", \"values\": {}}",
                "a,s,1,kg\nb,s,2,kg\nc,s,3,kg\n",
                FOUR_WISHES);
    }

    /** a and b differ by a ten-billionth of a cent; both of them are wanted, and never together. */
    @ParameterizedTest
    @CsvSource({"1,1.0000000000001", "1.0000000000001,1"})
    void theCostWithoutARuleIsTheLeastToTheLastDigit(String priceOfA, String priceOfB) throws IOException {
        var conflict = conflict(
                "{\"id\": \"a\", \"values\": {}}, {\"id\": \"b\", \"values\": {}}, {\"id\": \"c\", \"values\": {}}",
                "a,s," + priceOfA + ",kg\nb,s," + priceOfB + ",kg\nc,s,9,kg\n",
                """
                "bounds": [{"ingredient": "c", "max": "50 %"}],
                "rules": [{"neverTogether": ["a", "b"]}, {"choose": {"ingredient": ["a", "b"]}, "min": 2}]""");
        assertThat(costs(conflict)).containsEntry("/rules/1", BigFraction.ONE);
        var dearer = Decimal.of("0.0000000000001").divide(10_000);
        assertThat(costs(conflict)).containsEntry("/rules/0", BigFraction.ONE.add(dearer));
    }

    @Test
    void whatIsNotDecidedInTimeIsToldAsOpenAndNotAsImpossible() throws IOException {
        var brief = brief(
                "{\"id\": \"a\", \"values\": {\"PROCNT\": 40}}",
                "a,s,2,kg\n",
                "\"bounds\": [{\"name\": \"strong\", \"property\": \"PROCNT\", \"min\": \"50 %\"}]");
        var conflict = ConflictExplainer.explain(
                brief,
                BriefCompiler.compile(brief),
                1,
                new Hurried(PLANNER.trials(Deadline.in(Duration.ofMinutes(1)))));
        assertThat(conflict.sets()).hasSize(1);
        assertThat(conflict.cures()).isEmpty();
        assertThat(conflict.open()).anyMatch(words -> words.contains("strong"));
        var model = BriefCompiler.compile(brief).model();
        var proof = new Contradiction.Sum((Verdict.Impossible) Prover.EXACT.prove(model));
        var text = TextRenderer.render(ConflictReport.of(NoBlendResults.of(new Conflicted(brief, conflict, proof))));
        assertThat(text).contains("Not decided in time").doesNotContain("No single change makes");
    }

    /**
     * Bounds that contradict each other are added up; of rules, every choice is ruled out: both are told as they are.
     */
    @Test
    void aContradictionIsToldAsItWasProved() throws IOException {
        var set = "{\"id\": \"a\", \"values\": {\"PROCNT\": 40}}, {\"id\": \"b\", \"values\": {\"PROCNT\": 40}}";
        var prices = "a,s,2,kg\nb,s,2,kg\n";
        var summed = conflicted(set, prices, "\"bounds\": [{\"property\": \"PROCNT\", \"min\": \"50 %\"}]");
        assertThat(ResultJson.text(NoBlendResults.of(summed)))
                .containsPattern("\"provedBy\"\\s*:\\s*\"multipliers\"")
                .doesNotContain("looked");
        assertThat(TextRenderer.render(ConflictReport.of(NoBlendResults.of(summed))))
                .doesNotContain("set of choices");
        var ruled = conflicted(
                set,
                prices,
                "\"bounds\": [], \"rules\": [{\"neverTogether\": [\"a\", \"b\"]},"
                        + " {\"choose\": {\"ingredient\": [\"a\", \"b\"]}, \"min\": 2}]");
        int looked = ((Contradiction.RuledOut) ruled.proof()).proof().looked();
        assertThat(looked).isPositive();
        assertThat(ResultJson.text(NoBlendResults.of(ruled)))
                .containsPattern("\"provedBy\"\\s*:\\s*\"branching\",\\s*\"looked\"\\s*:\\s*" + looked);
        assertThat(TextRenderer.render(ConflictReport.of(NoBlendResults.of(ruled)))
                        .replaceAll("\\s+", " "))
                .contains("every choice that the rules leave was ruled out, after " + looked + " set");
    }

    /** Trials whose time is over when it comes to other briefs. */
    private record Hurried(Trials trials) implements Trials {
        @Override
        public Trials under(List<Cone> cones) {
            return this;
        }

        @Override
        public Verdict prove(LinearModel model) {
            return trials.prove(model);
        }

        @Override
        public Trial solve(Brief brief) {
            return new Trial.Open("the time was over");
        }

        @Override
        public Search least(MixedModel model) {
            return trials.least(model);
        }

        @Override
        public Search any(MixedModel model) {
            return trials.any(model);
        }

        @Override
        public boolean isOver() {
            return false;
        }
    }

    private static Map<String, BigFraction> costs(Conflict conflict) {
        return conflict.cures().stream()
                .collect(Collectors.toMap(Relaxation::path, cure -> Objects.requireNonNull(cure.costPerKg())));
    }

    private static Map<String, BigFraction> numbers(Conflict conflict) {
        return conflict.cures().stream()
                .filter(cure -> cure.change() instanceof Change.Moves)
                .collect(Collectors.toMap(Relaxation::path, CuresTest::number));
    }

    private static BigFraction number(Relaxation cure) {
        return ((Change.Moves) cure.change()).to();
    }

    private Conflict conflict(String ingredients, String prices, String rest) throws IOException {
        return conflicted(ingredients, prices, rest).conflict();
    }

    private Conflicted conflicted(String ingredients, String prices, String rest) throws IOException {
        return (Conflicted) PLANNER.plan(brief(ingredients, prices, rest));
    }

    private Brief brief(String ingredients, String prices, String rest) throws IOException {
        Files.writeString(folder.resolve("ingredients.json"), "{\"ingredients\": [" + ingredients + "]}");
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\n" + prices);
        var file = Files.writeString(
                folder.resolve("brief.json"),
                "{\"ingredients\": \"ingredients.json\", \"prices\": [\"prices.csv\"], \"currency\": \"USD\","
                        + " \"batch\": \"10 kg\", " + rest + "}");
        var reading = Documents.readBrief(file, Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }
}
