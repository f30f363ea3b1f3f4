package panade.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The page of formats shows every field and column there is. Which there are, the program itself is asked: a field that
 * belongs nowhere is put into each object of the examples in turn, and the message names those that belong there.
 */
class FormatsTest {
    private static final Path PAGE = Pages.MANUAL.resolve("formats.md");
    private static final String STRANGE = "zz belongs nowhere";
    private static final Pattern FIELDS = Pattern.compile("\"" + STRANGE
            + "\" is not a field that belongs here\\.\\s+(?:Did you mean .*\\s+)?Expected one of: ([^.]*)\\.");
    private static final Pattern COLUMNS =
            Pattern.compile("\"" + STRANGE + "\".*\\s+Expected a first line such as: ([^.]*)\\.");

    /** What reads each file. */
    private static final Map<String, String> READ_BY = Map.ofEntries(
            Map.entry("pantry.json", "check mince.json"),
            Map.entry("prices.csv", "check mince.json"),
            Map.entry("suppliers.csv", "buy mince.json=60lb"),
            Map.entry("mince.json", "check mince.json"),
            Map.entry("short.json", "check short.json"),
            Map.entry("sure.json", "check sure.json"),
            Map.entry("tried.json", "check tried.json"),
            Map.entry("made.json", "check made.json"),
            Map.entry("made.csv", "made made.csv --brief mince.json"),
            Map.entry("trials.json", "check trials.json"),
            Map.entry("weighed.csv", "check trials.json"),
            Map.entry("measured.csv", "check trials.json"),
            Map.entry("stock.csv", "buy mince.json=60lb --stock stock.csv"),
            Map.entry("periods.json", "buy mince.json=60lb --periods periods.json"),
            Map.entry("spread.csv", "study mince.json --spread spread.csv"));

    private static final JsonMapper JSON =
            JsonMapper.builder().enable(JsonReadFeature.ALLOW_JAVA_COMMENTS).build();

    private final Desk desk;
    private final Map<String, String> files = new LinkedHashMap<>();

    FormatsTest() throws IOException {
        desk = Desk.of(PAGE);
        for (var block : Pages.blocks(PAGE)) {
            if (Pages.isFile(block)) {
                files.put(block.group(3), Pages.text(block));
                desk.write(block.group(3), Pages.text(block));
            }
        }
    }

    @Test
    void every_field_that_the_readers_accept_has_an_example() {
        assertThat(files.keySet()).containsExactlyInAnyOrderElementsOf(READ_BY.keySet());
        var shown = new LinkedHashMap<List<String>, Set<String>>();
        files.forEach((name, text) -> {
            if (name.endsWith(".json")) {
                visit(name, (ObjectNode) JSON.readTree(text), shown);
            }
        });
        assertThat(shown).hasSizeGreaterThan(20);
        shown.forEach((fields, examples) -> assertThat(isSelector(fields) ? ofSelectors(shown) : examples)
                .as("shown of %s", fields)
                .containsAll(fields));
    }

    /** Anything that can be measured is asked for in the same words, by a bound, a lever or a part of either. */
    private static boolean isSelector(List<String> fields) {
        return fields.containsAll(List.of("property", "sum"));
    }

    private static Set<String> ofSelectors(Map<List<String>, Set<String>> shown) {
        var fields = new TreeSet<String>();
        shown.forEach((each, examples) -> fields.addAll(isSelector(each) ? examples : Set.of()));
        return fields;
    }

    private void visit(String name, ObjectNode root, Map<List<String>, Set<String>> shown) {
        for (var object : objects(root).toList()) {
            var fields = new TreeSet<>(object.propertyNames());
            object.put(STRANGE, 1);
            expected(name, root.toPrettyString(), FIELDS)
                    .ifPresent(known ->
                            shown.computeIfAbsent(known, key -> new TreeSet<>()).addAll(fields));
            object.remove(STRANGE);
        }
        desk.write(name, files.getOrDefault(name, ""));
    }

    private static Stream<ObjectNode> objects(JsonNode node) {
        var inside = node.valueStream().flatMap(FormatsTest::objects);
        return node instanceof ObjectNode object ? Stream.concat(Stream.of(object), inside) : inside;
    }

    /** What belongs where the strange name was written; empty where any name does, such as an ingredient's. */
    private Optional<List<String>> expected(String name, String changed, Pattern message) {
        desk.write(name, changed);
        var found = message.matcher(desk.printed(READ_BY.getOrDefault(name, "")));
        return found.find() ? Optional.of(List.of(found.group(1).split(",\\s*", -1))) : Optional.empty();
    }

    @Test
    void every_form_of_a_rule_has_an_example() {
        var root = (ObjectNode) JSON.readTree(files.getOrDefault("short.json", ""));
        var shown = root.get("rules")
                .valueStream()
                .flatMap(rule -> rule.propertyNames().stream())
                .toList();
        root.withArray("rules").addObject().put(STRANGE, 1);
        desk.write("short.json", root.toString());
        var told = desk.printed("check short.json");
        assertThat(told).contains("Expected a rule with");
        assertThat(Pattern.compile("\"(\\w+)\"")
                        .matcher(told.substring(told.indexOf("Expected a rule with")))
                        .results()
                        .map(form -> form.group(1)))
                .hasSizeGreaterThan(3)
                .allMatch(shown::contains);
    }

    @Test
    void every_column_that_the_readers_accept_is_shown() {
        int tables = 0;
        for (var name : files.keySet()) {
            if (name.endsWith(".csv")) {
                var text = files.getOrDefault(name, "");
                int end = text.indexOf('\n');
                var known = expected(name, text.substring(0, end) + "," + STRANGE + text.substring(end), COLUMNS);
                assertThat(known).as(name).isPresent();
                assertThat(Arrays.asList(text.substring(0, end).split(",", -1)))
                        .as(name)
                        .containsExactlyElementsOf(known.orElseThrow());
                desk.write(name, text);
                tables++;
            }
        }
        assertThat(tables).isEqualTo(7);
    }

    @Test
    void the_examples_can_be_used_as_they_stand() {
        assertThat(desk.printed("blend mince.json"))
                .contains("\nCheapest blend: ")
                .doesNotContain("Remark");
        assertThat(desk.printed("blend tried.json")).contains("\nCheapest blend: ");
        assertThat(desk.printed("made made.csv --brief mince.json")).contains("\nAs made, ");
        assertThat(desk.printed("fit trials.json")).contains("break (4 trials)", "juicy (2 trials)");
        assertThat(desk.printed("study mince.json --draws 20 --compositions 0 --spread spread.csv"))
                .contains("prices drawn 20 times");
        assertThat(desk.printed("buy mince.json=60lb --stock stock.csv --periods periods.json --seconds 20"))
                .contains("2 periods", "Cash out");
    }
}
