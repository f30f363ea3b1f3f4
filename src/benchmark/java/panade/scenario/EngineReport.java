package panade.scenario;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the engine's benchmarks and writes their figures, and above all their ratios, into a file. */
public final class EngineReport {
    private EngineReport() {}

    /** Takes the file to write. */
    public static void main(String[] arguments) throws RunnerException, IOException {
        var draws = scores(DrawBenchmark.class);
        var growth = scores(GrowthBenchmark.class);
        try (var out = new PrintStream(Files.newOutputStream(Path.of(arguments[0])), true, StandardCharsets.UTF_8)) {
            out.println("Draws of prices answered a second, against GLOP solving again from its last basis");
            draws.forEach((model, score) -> out.printf(
                    Locale.ROOT,
                    "%-14s one thread %,9.0f (%5.1fx)   two threads %,9.0f (%5.1fx)   GLOP %,9.0f%n",
                    model,
                    score.get("graph"),
                    score.get("graph") / score.get("solver"),
                    score.get("graphByTwo"),
                    score.get("graphByTwo") / score.get("solver"),
                    score.get("solver")));
            out.println();
            out.println("One solve from nothing, milliseconds, against GLOP alone");
            growth.forEach((model, score) -> out.printf(
                    Locale.ROOT,
                    "%-14s GLOP %8.1f   ours %8.1f (%4.2fx)   with the proof %8.1f (%4.2fx)   the proof %8.1f%n",
                    model,
                    score.get("bare"),
                    score.get("ours"),
                    score.get("ours") / score.get("bare"),
                    score.get("oursWithProof"),
                    score.get("oursWithProof") / score.get("bare"),
                    score.get("proof")));
        }
    }

    /** The score of each method by its parameters. */
    private static Map<String, Map<String, Double>> scores(Class<?> benchmark) throws RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(benchmark.getName() + "\\.")
                        .build())
                .run();
        var scores = new TreeMap<String, Map<String, Double>>();
        for (var result : results) {
            var parameters = result.getParams();
            var name = parameters.getParam("model")
                    + (parameters.getParamsKeys().contains("percent")
                            ? " +-" + parameters.getParam("percent") + " %"
                            : "");
            scores.computeIfAbsent(name, key -> new TreeMap<>())
                    .put(
                            result.getPrimaryResult().getLabel(),
                            result.getPrimaryResult().getScore());
        }
        return scores;
    }
}
