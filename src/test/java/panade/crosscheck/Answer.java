package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.solver.Solver;

/** What panade answers to a problem that is written as documents and read back. */
final class Answer {
    private Answer() {}

    static Outcome to(RawProblem problem, Solver solver) {
        return new Planner(solver).plan(brief(problem));
    }

    static Brief brief(RawProblem problem) {
        try {
            var folder = Files.createTempDirectory("panade-crosscheck");
            try {
                return accepted(RawDocuments.of(problem).writeInto(folder));
            } finally {
                clear(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Blended blended(RawProblem problem, Solver solver) {
        var outcome = to(problem, solver);
        assertThat(outcome).isInstanceOf(Blended.class);
        return (Blended) outcome;
    }

    static BigFraction cost(RawProblem problem, Solver solver) {
        return blended(problem, solver).blend().costPerKg();
    }

    private static Brief accepted(Path file) {
        var reading = Documents.readBrief(file, Overrides.NONE);
        assertThat(reading).isInstanceOf(Reading.Accepted.class);
        return ((Reading.Accepted<Brief>) reading).value();
    }

    private static void clear(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            for (var file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(folder);
    }
}
