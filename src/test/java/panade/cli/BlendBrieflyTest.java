package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is told first counts all that it leaves out; the counts are taken again from the result for machines. */
class BlendBrieflyTest {
    private static final String FILLING = "constraints/dumpling-filling.json";
    private static final Pattern SENTENCE = Pattern.compile("(?m)^- .*(?:at its least|at its most|fixed at) ");

    private static String printed(String... more) {
        var words = new ArrayList<>(List.of("blend", FILLING));
        words.addAll(List.of(more));
        return CommandRun.of(words.toArray(String[]::new)).output().replaceAll("\\s*\\n(?! *[-\\n]) *", " ");
    }

    private static JsonNode json() {
        return JsonMapper.shared()
                .readTree(CommandRun.of("blend", FILLING, "--json").output());
    }

    @Test
    void idle_bounds_are_counted_and_the_dearest_five_told() {
        var bounds = json().get("bounds");
        long idle = bounds.valueStream()
                .filter(bound -> bound.get("binding").isNull())
                .count();
        var text = printed();
        assertThat(text).contains("It keeps " + idle + " other bounds with room to spare.");
        assertThat(SENTENCE.matcher(text).results()).hasSize(5);
        long held = bounds.size() - idle;
        assertThat(text).contains("- and " + (held - 5) + " more, each of which holds it up less.");
        assertThat(text).doesNotContain("Every bound", "Room to move", "What the blend holds");
    }

    @Test
    void the_unused_ingredient_that_is_nearest_to_coming_in_is_named() {
        var unused = json().get("unused");
        var nearest = unused.valueStream()
                .filter(each -> !each.get("entersAt").isNull())
                .max((a, b) -> part(a).compareTo(part(b)))
                .orElseThrow();
        assertThat(nearest.get("ingredient").asString()).isEqualTo("textured-pea");
        assertThat(printed())
                .contains(unused.size()
                        + " ingredients are not used. Nearest to coming in: pea mince, dry crumble, below ");
    }

    private static BigDecimal part(JsonNode unused) {
        return unused.get("entersAt")
                .decimalValue()
                .divide(unused.get("pricePerKg").decimalValue(), 9, RoundingMode.HALF_EVEN);
    }

    @Test
    void all_tells_every_bound_and_says_nothing_of_more() {
        var all = printed("--all");
        assertThat(all).contains("Every bound", "Room to move", "Not used, and", "What the blend holds");
        assertThat(all).doesNotContain("With --all", "each of which holds it up less");
        assertThat(SENTENCE.matcher(all).results().count()).isGreaterThan(20);
    }
}
