package panade.harden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Small documents that would take time or memory without bound: each is answered or refused within its time. */
@Tag("harden")
class DenialTest {
    private static final String SET = """
            {"traits": {"bite": {"absent": 0}}, "ingredients": [
            {"id": "pea", "kinds": ["dry"], "values": {"PROCNT": 60, "FAT": 5, "NA": 1}},
            {"id": "oil", "values": {"PROCNT": 0, "FAT": 100, "NA": 0}}MORE]}""";
    private static final String PRICES = "ingredient,supplier,price,per\npea,a,4,kg\noil,a,2,kg\n";
    private static final String BRIEF = "{\"ingredients\": \"set.json\", \"prices\": [\"prices.csv\"], \"currency\":"
            + " \"USD\", \"batch\": \"10 kg\", \"bounds\": [{\"property\": \"FAT\", \"min\": \"20 %\"}MORE]}";

    @TempDir
    Path folder;

    private String set = SET;
    private String prices = PRICES;
    private String brief = BRIEF;

    private static String each(int count, IntFunction<String> what) {
        return IntStream.range(0, count).mapToObj(what).collect(Collectors.joining());
    }

    private String ends(String command, String... more) throws IOException {
        Files.writeString(folder.resolve("set.json"), set.replace("MORE", ""));
        Files.writeString(folder.resolve("prices.csv"), prices);
        var file = Files.writeString(folder.resolve("brief.json"), brief.replace("MORE", ""));
        var words = new String[2 + more.length];
        words[0] = command;
        words[1] = file.toString();
        System.arraycopy(more, 0, words, 2, more.length);
        var run = LimitedRun.of(words);
        assertThat(LimitedRun.fault(run)).isNull();
        return run == null ? "" : run.messages();
    }

    @ParameterizedTest
    @ValueSource(ints = {45, 2000})
    void sums_of_sums(int levels) throws IOException {
        set = set.replace(
                "{\"bite\"",
                "{\"s0\": {\"sum\": {\"FAT\": 1, \"PROCNT\": 1}}"
                        + each(
                                levels,
                                i -> ", \"s" + (i + 1) + "\": {\"sum\": {\"s" + i + "\": 1, \"FAT\": 1"
                                        + (i == 0 ? "" : ", \"s" + (i - 1) + "\": 1") + "}}")
                        + ", \"bite\"");
        brief = brief.replace("MORE", ", {\"property\": \"s" + levels + "\", \"min\": 0}");
        var told = ends("check");
        assertThat(told.isEmpty()).as(told).isEqualTo(levels < 50);
        assertThat(told.lines().count()).isLessThan(6);
    }

    @ParameterizedTest
    @ValueSource(ints = {19, 1000})
    void a_chain_of_variants(int levels) throws IOException {
        set = set.replace(
                "MORE",
                each(
                        levels,
                        i -> ",\n{\"id\": \"v" + i + "\", \"variantOf\": \"" + (i == 0 ? "pea" : "v" + (i - 1))
                                + "\", \"values\": {\"PROCNT\": 1, \"FAT\": 1}, \"maxUse\": \"50 %\"}"));
        prices += each(levels, i -> "v" + i + ",a,5,kg\n");
        assertThat(ends("blend").isEmpty()).isEqualTo(levels < 20);
    }

    @Test
    void misspelt_names_against_long_ids() throws IOException {
        var name = "long-name-".repeat(60);
        set = set.replace("MORE", each(2000, i -> ",\n{\"id\": \"" + name + i + "\", \"values\": {}}"));
        brief = brief.replace(
                "MORE", each(500, i -> ", {\"ingredient\": \"" + name + "x" + i + "\", \"max\": \"1 %\"}"));
        ends("check");
    }

    @Test
    void price_rows_without_end() throws IOException {
        prices += each(40_000, i -> "pea,s" + i + ",4." + i + ",kg\n");
        ends("check");
    }

    @Test
    void offers_without_end() throws IOException {
        prices += each(10_000, i -> "pea,s" + i + ",4." + i + ",kg\n");
        ends("blend");
    }

    @Test
    void a_header_without_end() throws IOException {
        prices = prices.replace("per\n", "per" + each(200_000, i -> ",c" + i) + "\n");
        assertThat(ends("check")).contains("\nAnd 199802 more, not shown: mend these first.\n200002 problems;");
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "1", "1 ", "0.", "e", "1e", "\u00a0", "kg", "-"})
    void a_batch_without_end(String word) throws IOException {
        brief = brief.replace("10 kg", word.repeat(1_000_000) + " kg");
        ends("check");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", " ", "1 ", "%", "1e9"})
    void a_limit_without_end(String word) throws IOException {
        brief = brief.replace("20 %", word.repeat(300_000) + " %");
        ends("blend");
    }

    @Test
    void a_bare_number_without_end() throws IOException {
        brief = brief.replace("\"20 %\"", "1".repeat(1_000_000));
        ends("check");
        brief = BRIEF.replace("\"20 %\"", "1e2147483648");
        ends("check");
    }

    @Test
    void briefs_based_on_briefs() throws IOException {
        for (int i = 0; i < 3000; i++) {
            Files.writeString(
                    folder.resolve("b" + i + ".json"),
                    "{\"basedOn\": \"" + (i == 2999 ? "brief" : "b" + (i + 1)) + ".json\"}");
        }
        brief = brief.replace("{\"ing", "{\"basedOn\": \"b0.json\", \"ing");
        assertThat(ends("blend")).contains("in a row that is based on another");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "blend", "made", "fit"})
    void a_document_that_never_ends(String command) {
        var run = LimitedRun.of(command, "/dev/zero");
        assertThat(LimitedRun.fault(run)).isNull();
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{\"sum\":[", "{\"a\":", "/*", "\"", "//\n"})
    void nesting_without_end(String word) throws IOException {
        brief = word.repeat(1_000_000);
        ends("check");
        brief = BRIEF.replace("MORE", "," + word.repeat(200_000));
        ends("blend");
    }

    @Test
    void sums_in_sums_of_a_bound() throws IOException {
        brief = brief.replace("MORE", ", " + "{\"sum\": [".repeat(900) + "{\"kind\": \"dry\"}" + "]}".repeat(900));
        ends("check");
    }

    @Test
    void rules_without_end() throws IOException {
        set = set.replace(
                "MORE",
                each(
                        60,
                        i -> ",\n{\"id\": \"r" + i + "\", \"kinds\": [\"r\"], \"values\": {\"PROCNT\": " + i % 50
                                + ", \"FAT\": " + i % 40 + "}}"));
        prices += each(60, i -> "r" + i + ",a," + (1 + i * 7 % 13) + "." + i + ",kg\n");
        brief = brief.replace(
                "\"batch\"",
                "\"rules\": [{\"choose\": {\"kind\": \"r\"}, \"min\": 20, \"max\": 25}"
                        + each(59, i -> ", {\"neverTogether\": [\"r" + i + "\", \"r" + (i + 1) + "\"]}")
                        + each(60, i -> ", {\"whenUsed\": \"r" + i + "\", \"min\": \"" + (1 + i % 4) + " %\"}")
                        + "], \"batch\"");
        ends("check");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e18 kg", "1e-18 g", "1e60 kg", "999999999999 kg", "1e-60 g"})
    void scales_and_batches_out_of_all_proportion(String amount) throws IOException {
        ends("batch", "--weighing", amount);
        ends("batch", "--batch", amount);
        ends("blend", "--batch", amount);
    }

    @Test
    void a_value_is_not_told_whole() throws IOException {
        brief = brief.replace(
                "MORE", ", {\"" + "x".repeat(100_000) + "\": 1, \"ingredient\": \"" + "y".repeat(100_000) + "\"}");
        assertThat(ends("check")).hasSizeLessThan(10_000);
    }

    @Test
    void workbooks_that_unpack_without_end() throws IOException {
        var zeros = "<a>" + " ".repeat(50_000_000) + "</a>";
        bomb("spaces.xlsx", Map.of("xl/workbook.xml", zeros));
        var entities = "<?xml version=\"1.0\"?><!DOCTYPE l [<!ENTITY a0 \"ha\">"
                + each(30, i -> "<!ENTITY a" + (i + 1) + " \"&a" + i + ";&a" + i + ";\">")
                + "]><workbook>&a30;</workbook>";
        bomb("laughs.xlsx", Map.of("xl/workbook.xml", entities));
        bomb(
                "outside.xlsx",
                Map.of("xl/workbook.xml", "<!DOCTYPE a [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><a>&x;</a>"));
        bomb("deep.xlsx", Map.of("xl/workbook.xml", "<a>".repeat(500_000)));
    }

    private void bomb(String name, Map<String, String> damaged) throws IOException {
        var parts = new LinkedHashMap<String, byte[]>();
        parts.put(
                "[Content_Types].xml",
                ("<?xml version=\"1.0\"?><Types"
                                + " xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\""
                                + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Override"
                                + " PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml"
                                + ".sheet.main+xml\"/></Types>")
                        .getBytes(StandardCharsets.UTF_8));
        parts.put(
                "_rels/.rels",
                ("<?xml version=\"1.0\"?><Relationships"
                                + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\""
                                + " Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\""
                                + " Target=\"xl/workbook.xml\"/></Relationships>")
                        .getBytes(StandardCharsets.UTF_8));
        damaged.forEach((part, text) -> parts.put(part, text.getBytes(StandardCharsets.UTF_8)));
        var file = Files.write(folder.resolve(name), BookMutation.packed(parts));
        assertThat(LimitedRun.fault(LimitedRun.of("check", file.toString())))
                .as(name)
                .isNull();
        assertThat(LimitedRun.fault(LimitedRun.of(
                        "import",
                        file.toString(),
                        "--into",
                        folder.resolve("in").toString())))
                .as(name)
                .isNull();
    }
}
