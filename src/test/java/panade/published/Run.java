package panade.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;

/** What {@code panade blend BRIEF --json} printed and how it ended. */
record Run(int status, String output, String messages) {

    // Many facts are checked of one blend; solving it once keeps the suite quick.
    private static final Map<List<String>, Run> DONE = new ConcurrentHashMap<>();

    static Run blend(Path brief, String... options) {
        List<String> arguments = new ArrayList<>(List.of("blend", brief.toString(), "--json"));
        arguments.addAll(List.of(options));
        return DONE.computeIfAbsent(arguments, Run::of);
    }

    private static Run of(List<String> arguments) {
        var run = CommandRun.of(arguments.toArray(String[]::new));
        return new Run(run.status(), run.output(), run.messages());
    }

    JsonNode result() {
        return Documents.parse(output);
    }

    JsonNode optimum() {
        assertThat(status).as("exit status; messages: %s", messages).isZero();
        JsonNode result = result();
        assertThat(result.path("status").asString()).as("status").isEqualTo("optimal");
        assertThat(result.at("/certificate/primal").asString()).isEqualTo("exact");
        assertThat(result.at("/certificate/dual").asString()).isEqualTo("exact");
        return result;
    }

    Stream<JsonNode> blend() {
        return optimum().path("blend").valueStream();
    }

    BigDecimal share(Predicate<JsonNode> ofRow) {
        return blend().filter(ofRow)
                .map(row -> row.path("share").decimalValue())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    JsonNode bound(String field, String text) {
        List<JsonNode> found = optimum()
                .path("bounds")
                .valueStream()
                .filter(bound -> bound.path(field).asString("").equals(text))
                .toList();
        assertThat(found).as("bounds with %s %s", field, text).hasSize(1);
        return found.get(0);
    }

    JsonNode entersAt(String ingredient) {
        List<JsonNode> found = optimum()
                .path("unused")
                .valueStream()
                .filter(unused -> unused.path("ingredient").asString("").equals(ingredient))
                .toList();
        assertThat(found).as("entries of %s among the unused", ingredient).hasSize(1);
        return found.get(0).path("entersAt");
    }
}
