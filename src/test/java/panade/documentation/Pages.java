package panade.documentation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What users read: the README and the pages of the manual. */
final class Pages {
    static final Path README = Path.of("README.md");
    static final Path MANUAL = Path.of("src", "manual");

    /**
     * A block that shows a command and what it prints, or one that shows a file, whose name stands behind the language.
     */
    static final Pattern BLOCK = Pattern.compile("```(?:text\\n\\$ panade (.*)\\n|(\\w+) (\\S+)\\n)((?:.*\\n)*?)```");

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

    static List<MatchResult> blocks(Path page) throws IOException {
        return BLOCK.matcher(Files.readString(page)).results().toList();
    }

    static boolean isFile(MatchResult block) {
        return block.group(3) != null;
    }

    static String command(MatchResult block) {
        return block.group(1);
    }

    /** What a block shows of an output, or the file that it is. */
    static String text(MatchResult block) {
        return block.group(4);
    }

    /** The files that a page links to, from where it stands. */
    static List<Path> links(Path page) throws IOException {
        return LINK.matcher(Files.readString(page))
                .results()
                .map(link -> page.resolveSibling(link.group(1)).normalize())
                .toList();
    }
}
