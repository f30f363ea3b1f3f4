package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.cli.command.BatchCommand;
import panade.cli.frame.Console;
import panade.model.MixedModel;
import panade.plan.Engines;
import panade.solver.MixedAnswer;
import panade.solver.MixedSolver;
import panade.solver.ortools.OrToolsMixedSolver;
import panade.solver.ortools.OrToolsSolver;
import picocli.CommandLine;

/**
 * 20.3 to 20.4 % of lard in 2 kg is 406 to 408 g, which no scale in steps of 100 g weighs; that takes a search to know.
 */
class WeightsNotFoundTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();

    /** Where the native libraries are not to be had. */
    private static final class Absent implements MixedSolver {
        @Override
        public String name() {
            return "absent";
        }

        @Override
        public MixedAnswer solve(MixedModel model, Duration limit) {
            return new MixedAnswer.Undecided("not there");
        }

        @Override
        public void interrupt() {
            // nothing ever runs
        }
    }

    @BeforeEach
    void lardAndWater() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [{"id": "lard", "values": {"FAT": 100}, "others": 0, "allergens": []},
                                 {"id": "water", "values": {"WATER": 100}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\nlard,farm,3,kg\nwater,tap,0,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"ingredients": "set.json", "prices": ["prices.csv"], "batch": "2 kg",
                 "bounds": [{"property": "FAT", "min": "20.3 %", "max": "20.4 %"}]}
                """);
    }

    @Test
    void withoutASearchItIsUndecidedWhetherThereAreWeights() {
        assertThat(batch(new Absent())).isEqualTo(6);
        assertThat(out.toString()).contains("may exist").doesNotContain("No finer scale");
    }

    @Test
    void afterASearchThereAreNone() {
        assertThat(batch(OrToolsMixedSolver.cbc())).isEqualTo(4);
        assertThat(out.toString()).doesNotContain("may exist");
    }

    private int batch(MixedSolver search) {
        var engines = new Engines(new OrToolsSolver(), search, search);
        return new CommandLine(
                        new BatchCommand(new Console(new PrintWriter(out, true), new PrintWriter(out, true), engines)))
                .execute(folder.resolve("brief.json").toString(), "--weighing", "100 g");
    }
}
