package panade.resolve;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import panade.testing.CommandRun;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;

/** What a command answered to a kitchen's documents. */
record Answered(int status, JsonNode json, String messages) {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    /** Words that stand for the brief and for a price list in a command. */
    static final String BRIEF = "BRIEF";

    /** The same as people read it. */
    static String text(TypedKitchen kitchen, String... words) {
        return written(kitchen, List.of(), words).output();
    }

    /** Writes the documents, runs the command with {@code --json}, and takes the documents away again. */
    static Answered to(TypedKitchen kitchen, String... words) {
        var ran = written(kitchen, List.of("--json"), words);
        var json = ran.output().isBlank() ? JsonNodeFactory.instance.missingNode() : MAPPER.readTree(ran.output());
        return new Answered(ran.status(), json, Arrays.toString(words) + " " + ran.messages());
    }

    /** What a command left behind. */
    private record Ran(int status, String output, String messages) {}

    private static Ran written(TypedKitchen kitchen, List<String> more, String... words) {
        try {
            var folder = Files.createTempDirectory("panade-resolve");
            try {
                return run(kitchen.writeInto(folder), folder, kitchen.lists().size(), more, words);
            } finally {
                clear(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Ran run(Path brief, Path folder, int lists, List<String> more, String... words) {
        var line = new ArrayList<String>();
        for (var word : words) {
            line.add(word.equals(BRIEF) ? brief.toString() : word);
        }
        if (words[0].equals("quotes")) {
            for (int i = 0; i < lists; i++) {
                line.addAll(
                        List.of("--prices", TypedKitchen.priceList(folder, i).toString()));
            }
        }
        line.addAll(more);
        var run = CommandRun.of(line.toArray(String[]::new));
        return new Ran(run.status(), run.output(), run.messages());
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
