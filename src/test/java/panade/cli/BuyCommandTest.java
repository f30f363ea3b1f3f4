package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.cli.command.BuyCommand;
import panade.cli.frame.Console;
import panade.model.MixedModel;
import panade.plan.Engines;
import panade.solver.MixedAnswer;
import panade.solver.MixedSolver;
import panade.solver.ortools.OrToolsMixedSolver;
import panade.solver.ortools.OrToolsSolver;
import picocli.CommandLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What {@code buy} tells of plans found, ruled out and neither, in the kitchen's own units. Invented. */
class BuyCommandTest {
    private static final JsonMapper JSON = new JsonMapper();

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    /** A search that answers some of what it is asked, in order, and then runs out of time. */
    private static final class Tired implements MixedSolver {
        private final MixedSolver fresh = OrToolsMixedSolver.scip();
        private int answers;

        Tired(int answers) {
            this.answers = answers;
        }

        @Override
        public String name() {
            return "tired";
        }

        @Override
        public synchronized MixedAnswer solve(MixedModel model, Duration limit) {
            // the model with blends kept has no column of a blend, so it is the smallest
            boolean kept = model.relaxed().columns().stream()
                    .noneMatch(column -> column.name().contains("@"));
            return answers-- > 0 && kept ? fresh.solve(model, limit) : new MixedAnswer.Undecided("out of time");
        }

        @Override
        public void interrupt() {
            fresh.interrupt();
        }
    }

    @Test
    void aSearchThatRanOutOfTimeIsUndecidedAndNotImpossible() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,4 lb,\n", "");
        assertThat(buy(new Tired(0), "--json")).isEqualTo(6);
        var result = JSON.readTree(out.toString());
        assertThat(result.get("status").asString()).isEqualTo("undecided");
        assertThat(result.get("reason").asString()).isEqualTo("out of time");
        assertThat(err.toString()).contains("none is ruled out");
    }

    @Test
    void textNeverCallsAnUndecidedPlanImpossible() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,4 lb,\n", "");
        assertThat(buy(new Tired(0))).isEqualTo(6);
        assertThat(out.toString())
                .contains("No plan was found, and none is ruled out: out of time.")
                .doesNotContain("No plan can be");
    }

    @Test
    void whereNoPlanIsFoundAllergensAreStillThoseOfWhatWouldBeMade() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,4 lb,\n", "");
        assertThat(buy(new Tired(0))).isEqualTo(6);
        // the cheapest blend is b alone, and nobody says what b holds
        assertThat(out.toString()).contains("not known for b.");
    }

    /** Where the native libraries are not to be had. */
    private static final class Absent implements MixedSolver {
        @Override
        public String name() {
            return "absent";
        }

        @Override
        public MixedAnswer solve(MixedModel model, Duration limit) {
            return new MixedAnswer.Undecided("the native libraries could not be loaded", false);
        }

        @Override
        public void interrupt() {
            // nothing ever runs
        }
    }

    @Test
    void whereThereIsNoSolverNobodyIsToldToSearchLonger() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,4 lb,\n", "");
        assertThat(buy(new Absent())).isEqualTo(6);
        assertThat(out.toString().replaceAll("\\s+", " "))
                .contains("the native libraries could not be loaded. Whole packs are found by a solver that does not"
                        + " start on this computer; searching longer does not help.")
                .doesNotContain("--seconds");
    }

    @Test
    void packsThatLeaveNoPlanAreToldAsTheSearchsWord() throws IOException {
        // 6 lb of b are needed; of 7 lb that can be had, one pack of 5 lb can be bought
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,5 lb,7 lb\n", "{\"ingredient\": \"b\", \"min\": \"6 lb\"}");
        assertThat(buy(OrToolsMixedSolver.scip(), "--json")).isEqualTo(4);
        var result = JSON.readTree(out.toString());
        assertThat(result.get("status").asString()).isEqualTo("infeasible");
        assertThat(result.get("proved").asBoolean()).isFalse();
    }

    @Test
    void goodsThatTwoProductsNeedAndOneCanHaveProveThatThereIsNoPlan() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,,7 lb\n", "{\"ingredient\": \"b\", \"min\": \"6 lb\"}");
        var brief = folder.resolve("brief.json") + "=10 lb";
        assertThat(run(OrToolsMixedSolver.scip(), brief, brief, "--json")).isEqualTo(4);
        assertThat(JSON.readTree(out.toString()).get("proved").asBoolean()).isTrue();
    }

    @Test
    void blendsThatAreKeptAreAPlanForASearchThatFoundNone() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,4 lb,\n", "{\"ingredient\": \"a\", \"min\": \"3 lb\"}");
        assertThat(buy(new Tired(99), "--json")).isZero();
        var result = JSON.readTree(out.toString());
        assertThat(result.get("searches").get("adapted").get("status").asString())
                .isEqualTo("planned");
        assertThat(result.get("adapted").get("finished").asBoolean()).isFalse();
        // 5 lb of a and 8 lb of b; 8.20 in parts of packs with nothing counted for what is left would be 13
        assertThat(result.get("leastCash").get("cash").decimalValue()).isEqualByComparingTo(new BigDecimal("18"));
        assertThat(result.get("leastCash").get("gap").decimalValue()).isPositive();
    }

    @Test
    void aKitchenThatWeighsInPoundsIsToldPounds() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,farm,1,lb,4 lb,\n", "{\"ingredient\": \"a\", \"min\": \"3 lb\"}");
        Files.writeString(folder.resolve("stock.csv"), "ingredient,amount\nb,2 kg\n");
        assertThat(buy(
                        OrToolsMixedSolver.scip(),
                        "--stock",
                        folder.resolve("stock.csv").toString()))
                .isZero();
        assertThat(out.toString()).contains("left, lb").contains("4.41 lb of b").doesNotContain(" kg");
    }

    @Test
    void whoeverAsksNothingOfAnOrderIsNotOrderedFrom() throws IOException {
        kitchen("10 lb", "a,mill,2,lb,5 lb,\nb,well,1,lb,,\n", "{\"ingredient\": \"a\", \"min\": \"3 lb\"}");
        Files.writeString(
                folder.resolve("suppliers.csv"), "supplier,minimumOrder,delivery,leadDays\nmill,0,0,2\nwell,0,0,0\n");
        assertThat(buy(OrToolsMixedSolver.scip(), "--json")).isZero();
        var orders = JSON.readTree(out.toString())
                .get("adapted")
                .get("periods")
                .get(0)
                .get("orders");
        var placed = new ArrayList<String>();
        for (JsonNode order : orders) {
            placed.add(
                    order.get("supplier").asString() + " " + order.get("placed").asBoolean());
        }
        assertThat(placed).containsExactlyInAnyOrder("mill true", "well false");
    }

    @Test
    void theBlendsOfThePlanCanBeWeighed() throws IOException {
        // 40 lb of which 7 lb at least are a, sold by the 10 lb; the plan uses all 10 lb of it
        kitchen("8 lb", "a,mill,2,lb,10 lb,\nb,farm,4,lb,1 lb,\n", "{\"ingredient\": \"a\", \"min\": \"17.5 %\"}");
        Files.writeString(
                folder.resolve("brief.json"),
                Files.readString(folder.resolve("brief.json"))
                        .replace("\"bounds\"", "\"weighing\": \"1 g\", \"bounds\""));
        var brief = folder.resolve("brief.json") + "=40 lb";
        assertThat(run(OrToolsMixedSolver.scip(), brief, "--sheets", "--json")).isZero();
        var result = JSON.readTree(out.toString());
        var sheet = result.get("sheets").get(0);
        assertThat(sheet.get("batches").asInt()).isEqualTo(5);
        assertThat(sheet.get("met").asBoolean()).isTrue();
        // all a, at 2/lb: 8 lb are 3628.74 g
        assertThat(sheet.get("lines").get(0).get("ingredient").asString()).isEqualTo("a");
        assertThat(sheet.get("lines").get(0).get("grams").decimalValue()).isEqualByComparingTo("3629");
        assertThat(sheet.get("costPerKg").decimalValue().doubleValue()).isBetween(4.409, 4.4093);
    }

    @Test
    void goodsThatRoundedWeightsUseUpAreTold() throws IOException {
        // 8 lb are 3628.74 g, weighed as 3629: five times that is 1.3 g more than the 40 lb there are
        kitchen("8 lb", "a,mill,2,lb,10 lb,\nb,farm,4,lb,1 lb,\n", "{\"ingredient\": \"a\", \"min\": \"17.5 %\"}");
        assertThat(run(OrToolsMixedSolver.scip(), folder.resolve("brief.json") + "=40 lb", "--sheets"))
                .isZero();
        assertThat(out.toString())
                .contains("- a, 1.31 g more than there is")
                .contains("40 lb of the plan are 5 batches");
    }

    private int buy(MixedSolver plans, String... options) {
        var arguments = new ArrayList<>(List.of(folder.resolve("brief.json") + "=10 lb"));
        arguments.addAll(List.of(options));
        return run(plans, arguments.toArray(new String[0]));
    }

    private int run(MixedSolver plans, String... arguments) {
        var engines = new Engines(new OrToolsSolver(), OrToolsMixedSolver.cbc(), plans);
        return new CommandLine(
                        new BuyCommand(new Console(new PrintWriter(out, true), new PrintWriter(err, true), engines)))
                .execute(arguments);
    }

    private void kitchen(String batch, String rows, String bounds) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "t", "source": "invented",
                 "ingredients": [{"id": "a", "values": {"FAT": 20}}, {"id": "b", "values": {"FAT": 20}}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per,pack,available\n" + rows);
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "t", "ingredients": "set.json", "prices": ["prices.csv"], "batch": "%s", "bounds": [%s]}
                """.formatted(batch, bounds));
    }
}
