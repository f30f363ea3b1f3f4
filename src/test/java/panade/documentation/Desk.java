package panade.documentation;

import static java.util.stream.Collectors.toCollection;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import panade.cli.Main;
import panade.testing.TemporaryFolders;

/**
 * Where a page's commands are typed: an empty folder, into which its files are written, if it shows files of its own,
 * else the folder of the project.
 */
final class Desk {
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** A file of the page, alone or as the beginning or end of a word such as {@code mince.json=4lb}. */
    private static final Pattern FILE = Pattern.compile("(?<![\\w./-])[\\w-]+\\.(?:json|csv|html|txt|xlsx|lp)\\b");

    private final String folder;

    private Desk(String folder) {
        this.folder = folder;
    }

    static Desk of(Path page) throws IOException {
        boolean own = Pages.blocks(page).stream().anyMatch(Pages::isFile);
        return new Desk(own ? TemporaryFolders.create("panade-page") + "/" : "");
    }

    /** Whether commands are typed in the folder of the project, where nothing changes between them. */
    boolean isProject() {
        return folder.isEmpty();
    }

    /** Where a file of that name lies. */
    Path file(String name) {
        return Path.of(folder + name);
    }

    /** What a command prints, messages and all; what follows {@code >} gets it instead. */
    String printed(String command) {
        var words = words(command);
        int to = words.indexOf(">");
        var arguments = to < 0 ? words : words.subList(0, to);
        var text = new StringWriter();
        var writer = new PrintWriter(text);
        Main.run(writer, writer, arguments.stream().map(this::placed).toArray(String[]::new));
        var printed = text.toString().replace(System.lineSeparator(), "\n");
        if (to < 0) {
            return folder.isEmpty() ? printed : printed.replace(folder, "");
        }
        write(words.get(to + 1), printed);
        return "";
    }

    void write(String name, String text) {
        try {
            Files.writeString(file(name), text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private String placed(String word) {
        return folder.isEmpty()
                ? word
                : FILE.matcher(word).replaceAll(name -> Matcher.quoteReplacement(folder + name.group()));
    }

    private static List<String> words(String command) {
        return WORD.matcher(command)
                .results()
                .map(word -> word.group(1) == null ? word.group(2) : word.group(1))
                .collect(toCollection(ArrayList::new));
    }
}
