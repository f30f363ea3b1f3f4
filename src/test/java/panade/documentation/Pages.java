package panade.documentation;

import static java.util.stream.Collectors.toCollection;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import panade.cli.Main;

/** What users read: the README and the pages of the manual. */
final class Pages {
    static final Path README = Path.of("README.md");
    static final Path MANUAL = Path.of("src", "manual");

    /** A block that shows a command and what it prints. */
    static final Pattern COMMAND = Pattern.compile("```text\\n\\$ panade (.*)\\n((?:.*\\n)*?)```");

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(?:#[^)]*)?\\)");

    private Pages() {}

    static List<Path> all() throws IOException {
        return Stream.concat(Stream.of(README), manual().stream()).toList();
    }

    static List<Path> manual() throws IOException {
        try (var files = Files.list(MANUAL)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    static List<MatchResult> commands(Path page) throws IOException {
        return COMMAND.matcher(Files.readString(page)).results().toList();
    }

    /** The files that a page links to, from where it stands. */
    static List<Path> links(Path page) throws IOException {
        return LINK.matcher(Files.readString(page))
                .results()
                .map(link -> page.resolveSibling(link.group(1)).normalize())
                .toList();
    }

    /** What a command prints, messages and all. */
    static String printed(String command) {
        var words = WORD.matcher(command)
                .results()
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .collect(toCollection(ArrayList::new));
        var text = new StringWriter();
        var writer = new PrintWriter(text);
        Main.run(writer, writer, words.toArray(String[]::new));
        return text.toString().replace(System.lineSeparator(), "\n");
    }
}
