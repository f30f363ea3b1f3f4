package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.testing.CommandRun;
import tools.jackson.databind.json.JsonMapper;

/**
 * Names that try to command a terminal: clear it, make a link, ring, turn the direction of what follows, fake lines.
 */
class HostileNamesTest {
    private static final String HOSTILE = "a\u001B[2J\u001B]8;;http://x\u001B\\\u0007\u009B1A\u202E\u2066z\r\u007F";

    @TempDir
    Path folder;

    private String brief = "";
    private String out = "";
    private String err = "";

    @BeforeEach
    void kitchen() throws IOException {
        var json = JsonMapper.shared();
        var id = json.writeValueAsString("salt" + HOSTILE.replace("\r", ""));
        var name = json.writeValueAsString(HOSTILE + "\n0 problems");
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [{"id": %s, "name": %s, "values": {"NA": 38758}, "others": 0, "allergens": []}]}
                """.formatted(id, name));
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\n\"salt" + HOSTILE.replace("\r", "") + "\",\"" + HOSTILE + "\",1,kg\n");
        brief = Files.writeString(folder.resolve("brief.json"), """
                {"title": %s, "ingredients": "set.json", "prices": ["prices.csv"], "batch": "1 kg", "serving": "100 g",
                 "bounds": [{"name": %s, "property": "NA", "min": "1 mg/100g"}]}
                """.formatted(name, name))
                .toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"blend", "reach", "batch", "panel", "study", "check", "swap", "quotes", "trace", "export"})
    void noCommandHandsThemToTheTerminal(String command) {
        var more = switch (command) {
            case "swap" -> new String[] {command, brief, "--out", "nothing" + HOSTILE};
            case "trace" -> new String[] {command, brief, "--bound", HOSTILE + "\n0 problems"};
            case "quotes" ->
                new String[] {
                    command, brief, "--prices", folder.resolve("prices.csv").toString()
                };
            case "export" -> new String[] {command, brief, "--lp"};
            case "study" -> new String[] {command, brief, "--draws", "10"};
            case "reach" -> new String[] {command, brief, "--target", "0.1/kg"};
            default -> new String[] {command, brief};
        };
        run(more);
        assertThat(out + err).isNotEmpty().satisfies(HostileNamesTest::isPlain);
        assertThat((out + err).lines()).noneMatch(line -> line.strip().startsWith("0 problems"));
    }

    @Test
    void theSameStandsInJsonAsJsonWritesIt() {
        assertThat(run("blend", brief, "--json")).isZero();
        assertThat(out).satisfies(HostileNamesTest::isPlain);
        var ingredient = JsonMapper.shared().readTree(out).get("blend").get(0).get("ingredient");
        assertThat(ingredient.stringValue()).isEqualTo("salt" + HOSTILE.replace("\r", ""));
    }

    @Test
    void messagesAboutOptionsAndFilesAreAsPlain() {
        assertThat(run("blend", "no" + HOSTILE + ".json")).isEqualTo(3);
        assertThat(err).satisfies(HostileNamesTest::isPlain);
        assertThat(run("blend", brief, "--b" + HOSTILE)).isEqualTo(2);
        assertThat(err).satisfies(HostileNamesTest::isPlain);
        assertThat(run("--explain", HOSTILE)).isEqualTo(2);
        assertThat(err).satisfies(HostileNamesTest::isPlain);
    }

    @Test
    void aHostileValueIsNotRepeatedWhole() throws IOException {
        var value = "x".repeat(100_000);
        Files.writeString(Path.of(brief), "{\"title\": \"t\", \"" + value + "\": 1, \"batch\": \"" + value + "\"}");
        assertThat(run("blend", brief)).isEqualTo(3);
        assertThat(err.length()).isLessThan(10_000);
        assertThat(run("--explain", value)).isEqualTo(2);
        assertThat(err.length()).isLessThan(1_000);
    }

    @Property(tries = 200)
    void whatTheConsoleLetsThroughShowsTextAndBreaksLines(@ForAll("chunks") List<String> chunks) {
        var screen = new StringWriter();
        var console = new PrintWriter(new ConsoleWriter(screen, () -> {}));
        chunks.forEach(console::print);
        console.flush();
        isPlain(screen.toString());
    }

    @Provide
    Arbitrary<List<String>> chunks() {
        var characters = Arbitraries.chars().with("\r\n\t\u001B\u009B\u0007\u202E\u2069\u007Fax");
        return characters
                .list()
                .ofMaxSize(4)
                .map(each -> {
                    var text = new StringBuilder();
                    each.forEach(text::append);
                    return text.toString();
                })
                .list()
                .ofMaxSize(6);
    }

    private static void isPlain(String text) {
        assertThat(text.replace("\r\n", "\n").replace("\n", "").replace("\t", ""))
                .doesNotContainPattern("[\\p{Cc}\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069\\u2028\\u2029]");
    }

    private int run(String... words) {
        var run = CommandRun.of(words);
        out = run.output();
        err = run.messages();
        return run.status();
    }
}
