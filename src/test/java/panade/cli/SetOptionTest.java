package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import panade.testing.CommandRun;
import panade.testing.Pottage;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A number that is tried gives the answer that documents give into which it is written by hand. */
class SetOptionTest {
    @TempDir
    private Path folder;

    private Pottage kitchen;

    @BeforeEach
    void write() throws IOException {
        kitchen = new Pottage(folder).write();
    }

    /** A setting, and what writing it by hand means. */
    record Edit(String setting, String file, String words, String others) {}

    static Stream<Edit> edits() {
        return Stream.of(
                new Edit("protein min 14 %", "brief.json", "\"12 %\"", "\"14 %\""),
                new Edit("PROCNT min 11 %", "brief.json", "\"12 %\"", "\"11 %\""),
                new Edit(
                        "protein max 12.5 %",
                        "brief.json", "\"min\": \"12 %\"", "\"min\": \"12 %\", \"max\": \"12.5 %\""),
                new Edit("sodium max 300 mg/100g", "brief.json", "\"400 mg/100g\"", "\"300 mg/100g\""),
                new Edit(
                        "NA min 200 mg/100g max 400 mg/100g min 350 mg/100g",
                        "brief.json",
                        "\"200 mg/100g\"",
                        "\"350 mg/100g\""),
                new Edit(
                        "NA = 310 mg/100g",
                        "brief.json",
                        "\"min\": \"200 mg/100g\", \"max\": \"400 mg/100g\"",
                        "\"min\": \"310 mg/100g\", \"max\": \"310 mg/100g\""),
                new Edit("/bounds/2 min 0.5", "brief.json", "\"min\": 0.25", "\"min\": 0.5"),
                new Edit("some rice min 3 kg", "brief.json", "\"min\": \"10 %\"", "\"min\": \"3 kg\""),
                new Edit("soaked max 30 %", "brief.json", "\"max\": \"40 %\"", "\"max\": \"30 %\""),
                new Edit("soak share min 80 %", "brief.json", "\"45 %\"", "\"80 %\""),
                new Edit("rice maxUse max 20 %", "set.json", "\"60 %\"", "\"20 %\""),
                new Edit("price rice 0.2/lb", "prices.csv", "rice,Mill,1,kg", "rice,Mill,0.2,lb"),
                new Edit("price cooked rice $60/20 kg", "prices.csv", "rice,Mill,1,kg", "rice,Mill,60,20 kg"),
                new Edit(
                        "price peas 1.10/lb",
                        "prices.csv",
                        "peas,Mill,2,kg,\npeas,Tarn,2.5,kg",
                        "peas,Mill,1.10,lb,\npeas,Tarn,1.10,lb"),
                new Edit("price peas from Tarn 1.8/kg", "prices.csv", "peas,Tarn,2.5,kg", "peas,Tarn,1.8,kg"),
                new Edit("available rice 1.5 kg", "prices.csv", "rice,Mill,1,kg,", "rice,Mill,1,kg,1.5 kg"),
                new Edit("available peas from Mill 1 lb", "prices.csv", "peas,Mill,2,kg,", "peas,Mill,2,kg,1 lb"),
                new Edit("out lentils", "prices.csv", "lentils,Tarn,3.2,kg,", "lentils,Tarn,3.2,kg,0 kg"));
    }

    /** Each edit moves something, so that a setting that is passed over is seen. */
    @ParameterizedTest
    @MethodSource("edits")
    void aNumberTriedIsANumberWritten(Edit edit) throws IOException {
        var command = List.of("blend", kitchen.path("brief.json"), "--json");
        var plain = Pottage.run(command);
        var tried = Pottage.run(command, edit.setting());
        kitchen.edited(edit.file(), edit.words(), edit.others());
        var written = Pottage.run(command);
        assertThat(tried.messages()).isEqualTo(written.messages());
        assertThat(tried.status()).isEqualTo(written.status());
        assertThat(answer(tried)).isEqualTo(answer(written)).isNotEqualTo(answer(plain));
    }

    /** What a run answers, without what is told of the settings alone. */
    private static JsonNode answer(CommandRun run) {
        var tree = (ObjectNode) tree(run);
        tree.remove("set");
        return tree;
    }

    private static JsonNode tree(CommandRun run) {
        assertThat(run.output()).as(run.messages()).isNotEmpty();
        return JsonMapper.shared().readTree(run.output().replaceAll(", trying [^\",]*", ""));
    }

    private List<List<String>> commands() {
        var brief = kitchen.path("brief.json");
        var formula = kitchen.path("formula.json");
        var page = folder.resolve("page.html").toString();
        return List.of(
                List.of("blend", brief),
                List.of("reach", brief),
                List.of("swap", brief, "--out", "peas"),
                List.of("quotes", brief, "--prices", kitchen.path("prices.csv"), "--prices", kitchen.path("later.csv")),
                List.of("quotes", brief, "--suppliers"),
                List.of("quotes", formula, "--suppliers"),
                List.of("trace", brief, "--bound", "some rice"),
                List.of("batch", brief),
                List.of("panel", brief),
                List.of("batch", formula),
                List.of("panel", formula),
                List.of("study", brief, "--draws", "20"),
                List.of("buy", brief + "=20 kg", "--seconds", "2"),
                List.of("export", brief, "--lp", folder.resolve("model.lp").toString()),
                List.of("report", brief, "--no-curves", "-o", page),
                List.of("made", formula),
                List.of("compare", formula, brief),
                List.of("nudge", formula, "--changes", "1"));
    }

    @Test
    void everyCommandTriesNumbersAndTellsWhatMoved() throws IOException {
        var settings = new String[] {"protein min 13 %", "price peas 1.10/lb"};
        var tried = commands().stream()
                .map(command -> Pottage.run(json(command), settings))
                .toList();
        kitchen.edited("brief.json", "\"12 %\"", "\"13 %\"")
                .edited("prices.csv", "peas,Mill,2,kg,\npeas,Tarn,2.5,kg", "peas,Mill,1.10,lb,\npeas,Tarn,1.10,lb");
        for (int i = 0; i < commands().size(); i++) {
            var command = commands().get(i);
            var written = Pottage.run(json(command));
            assertThat(tried.get(i).status())
                    .as("%s: %s", command, tried.get(i).messages())
                    .isEqualTo(written.status())
                    .isZero();
            assertThat(answer(tried.get(i))).as(command.toString()).isEqualTo(answer(written));
            assertThat(tree(tried.get(i))
                            .get("set")
                            .get("moved")
                            .get(0)
                            .get("what")
                            .asString())
                    .isIn("pottage", "prices");
        }
    }

    private static List<String> json(List<String> command) {
        var words = new ArrayList<>(command);
        words.add("--json");
        return words;
    }

    @Test
    void everyCommandTellsPeopleWhatMoved() {
        for (var command : commands()) {
            var run = Pottage.run(command, "protein min 13 %");
            assertThat(run.output())
                    .as(command.toString())
                    .contains("What trying this moves, against the documents as written")
                    .contains("- protein: at least 13 % instead of 12 %.");
            assertThat(run.output().lines())
                    .filteredOn(line -> !line.startsWith("Wrote "))
                    .allMatch(line -> line.length() <= 100);
        }
    }

    /** A table or a model stays what it is, and what moved goes where messages go. */
    @Test
    void whatIsReadByProgramsStaysAlone() {
        var brief = kitchen.path("brief.json");
        for (var command : List.of(
                List.of("trace", brief, "--bound", "some rice", "--csv"),
                List.of("buy", brief + "=20 kg", "--seconds", "2", "--csv"),
                List.of("export", brief, "--lp"))) {
            var run = Pottage.run(command, "protein min 13 %");
            assertThat(run.status()).as(run.messages()).isZero();
            assertThat(run.output()).doesNotContain("What trying");
            assertThat(run.messages()).contains("- protein: at least 13 % instead of 12 %.");
        }
    }
}
