package panade.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * GLPK's own program (Debian's package glpk-utils), where the machine has it. With PANADE_REQUIRE_GLPSOL set, as on the
 * build machine, its absence is a failure.
 */
final class ForeignSolver {
    private ForeignSolver() {}

    /** The least cost that glpsol finds in a file; a file of its own in the same folder takes the answer. */
    static BigDecimal leastCost(Path file, String... options) throws IOException, InterruptedException {
        requireGlpsol();
        var answer = file.resolveSibling("answer.txt");
        var log = file.resolveSibling("log.txt");
        var command = new ArrayList<>(List.of("glpsol", file.toString(), "--write", answer.toString()));
        command.addAll(List.of(options));
        int status = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start()
                .waitFor();
        assertThat(status).as(Files.readString(log)).isZero();
        return objective(Files.readString(answer));
    }

    /** The solution line: "s bas ROWS COLUMNS f f OBJECTIVE", or "s mip ROWS COLUMNS o OBJECTIVE". */
    private static BigDecimal objective(String answer) {
        var line =
                answer.lines().filter(each -> each.startsWith("s ")).findFirst().orElseThrow();
        var words = new ArrayList<>(List.of(line.split(" ")));
        assertThat(line).matches("s bas \\d+ \\d+ f f .*|s mip \\d+ \\d+ o .*");
        return new BigDecimal(words.get(words.size() - 1));
    }

    private static void requireGlpsol() throws IOException, InterruptedException {
        boolean there = isThere();
        if (!there && System.getenv("PANADE_REQUIRE_GLPSOL") != null) {
            fail("glpsol is not on this machine: install Debian's package glpk-utils");
        }
        assumeTrue(there, "glpsol is not on this machine");
    }

    private static boolean isThere() throws InterruptedException {
        try {
            return new ProcessBuilder("glpsol", "--version")
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
