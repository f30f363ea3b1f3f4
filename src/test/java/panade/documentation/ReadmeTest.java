package panade.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import panade.cli.Main;

/**
 * What the README shows is what the program prints; a line of three dots stands for lines left out. With
 * {@code -Dreadme.write=true} what it shows is first replaced by what is printed now; then read the sentences around
 * it.
 */
class ReadmeTest {
    private static final Pattern BLOCK = Pattern.compile("```text\\n\\$ panade (.*)\\n((?:.*\\n)*?)```");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final String DOTS = ShownOutput.DOTS;

    @BeforeAll
    static void rewriteWhereAsked() throws IOException {
        if (Boolean.getBoolean("readme.write")) {
            Files.writeString(Path.of("README.md"), BLOCK.matcher(readme()).replaceAll(ReadmeTest::rewritten));
        }
    }

    private static String rewritten(MatchResult block) {
        var command = block.group(1);
        var printed = run(command).strip().lines().toList();
        var now = ShownOutput.of(block.group(2)).of(printed);
        if (now.isEmpty()) {
            System.err.println("README.md: left as it is, what it shows is no longer found: " + command);
        }
        return Matcher.quoteReplacement(now.map(text -> "```text\n$ panade " + command + "\n" + text + "```")
                .orElse(block.group()));
    }

    @Test
    void every_shown_command_prints_what_is_shown() throws IOException {
        var blocks = BLOCK.matcher(readme()).results().toList();
        assertThat(blocks).hasSizeGreaterThanOrEqualTo(6);
        for (var block : blocks) {
            assertShown(block.group(1), block.group(2));
        }
    }

    @Test
    void it_begins_with_the_job_and_then_the_two_commands() throws IOException {
        var readme = readme();
        assertThat(readme).startsWith("# panade\n\nYou make a plant-based mince");
        assertThat(readme.indexOf("java -jar target/panade.jar blend")).isLessThan(readme.indexOf("mvn verify"));
        assertThat(Files.readString(Path.of(".ci", "run"))).contains("mvn -B -ntp verify");
    }

    private static void assertShown(String command, String shown) {
        var printed = run(command);
        int from = 0;
        for (var piece : pieces(shown)) {
            int at = printed.indexOf(piece, from);
            assertThat(at).as("%s prints%n%s%nbut%n%s", command, piece, printed).isNotNegative();
            from = at + piece.length();
        }
        if (!shown.contains("\n" + DOTS + "\n")) {
            assertThat(printed.strip()).isEqualTo(shown.strip());
        }
    }

    private static List<String> pieces(String shown) {
        return Arrays.stream(shown.split("(?m)^\\.\\.\\.\\n", -1))
                .map(String::strip)
                .filter(piece -> !piece.isEmpty())
                .toList();
    }

    private static String run(String command) {
        var words = new ArrayList<String>();
        WORD.matcher(command)
                .results()
                .forEach(word -> words.add(word.group(1) == null ? word.group(2) : word.group(1)));
        var text = new StringWriter();
        var writer = new PrintWriter(text);
        Main.run(writer, writer, words.toArray(String[]::new));
        return text.toString().replace(System.lineSeparator(), "\n");
    }

    private static String readme() throws IOException {
        return Files.readString(Path.of("README.md"));
    }
}
