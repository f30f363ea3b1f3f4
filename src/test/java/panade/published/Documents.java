package panade.published;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The documents held beside the tests, read with their decimals exactly as written. */
final class Documents {

    private static final JsonMapper EXACT = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private Documents() {}

    static Path folder(String name) {
        try {
            return Path.of(Documents.class.getResource("/" + name).toURI());
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    static List<String> namesIn(String folder) {
        try (Stream<Path> entries = Files.list(folder(folder))) {
            return entries.filter(Files::isDirectory)
                    .map(entry -> entry.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static JsonNode read(Path file) {
        return EXACT.readTree(file.toFile());
    }

    static JsonNode parse(String text) {
        return EXACT.readTree(text);
    }
}
