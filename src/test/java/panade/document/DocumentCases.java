package panade.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A file of cases, set apart by blank lines. */
record DocumentCases(Path file, List<DocumentCase> all) {
    static final Path FOLDER = Path.of("src", "test", "resources", "documents");

    private static final String TOLD = ">";

    /** The files of a folder, in the order of their names. */
    static List<DocumentCases> in(String folder) {
        try (var files = Files.list(FOLDER.resolve(folder))) {
            return files.sorted().map(DocumentCases::read).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static DocumentCases read(Path file) {
        try {
            var cases = Stream.of(Files.readString(file).split("\n\n"))
                    .map(DocumentCases::parse)
                    .toList();
            return new DocumentCases(file, cases);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DocumentCase parse(String text) {
        var lines = new ArrayList<String>();
        var told = new StringBuilder();
        for (var line : text.lines().toList()) {
            if (line.startsWith(TOLD)) {
                told.append(line.length() < 2 ? "" : line.substring(2)).append('\n');
            } else {
                lines.add(line);
            }
        }
        return new DocumentCase(lines, told.toString());
    }

    /** Writes the file with other texts told. */
    void write(Function<DocumentCase, String> telling) throws IOException {
        var text = all.stream()
                .map(each -> Stream.concat(
                                each.lines().stream(),
                                telling.apply(each).lines().map(line -> (TOLD + " " + line).stripTrailing()))
                        .collect(Collectors.joining("\n")))
                .collect(Collectors.joining("\n\n", "", "\n"));
        Files.writeString(file, text);
    }
}
