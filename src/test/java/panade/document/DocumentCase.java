package panade.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** A folder of test documents: one brief with the set and the price lists it names. */
record DocumentCase(Path folder) {
    static List<DocumentCase> allIn(String resource) {
        try (var folders = Files.list(root(resource))) {
            return folders.filter(Files::isDirectory)
                    .sorted()
                    .map(DocumentCase::new)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path root(String resource) {
        var address = Objects.requireNonNull(DocumentCase.class.getResource(resource), resource);
        try {
            return Path.of(address.toURI()).toAbsolutePath().normalize();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(resource, e);
        }
    }

    String name() {
        return Objects.toString(folder.getFileName());
    }

    String brief() {
        return folder.resolve("constraints").resolve("brief.json").toString();
    }

    List<ExpectedProblem> expected() {
        try {
            return ExpectedProblem.parse(Files.readAllLines(folder.resolve("expected.txt")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<PrintedProblem> printed(String messages) {
        return PrintedProblem.parse(messages.lines().toList(), folder);
    }
}
