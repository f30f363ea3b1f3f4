package panade.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/**
 * Fourer, Gay, Kernighan, "AMPL", 2nd ed. 2003, section 2.3: dinners with too little sodium allowed. The sets were
 * computed independently with a deletion filter over 200 random orders, amounts kept at or above zero.
 */
class PublishedConflictsTest {
    private static final String DINNERS = "published/ampl_diet2_infeasible";

    @Test
    void all_eight_conflicts_of_the_dinners_are_found_and_no_other() {
        var result = run("--conflicts", "60").result();
        var published = Documents.read(Documents.folder(DINNERS).resolve("published.json"));
        assertThat(result.path("allConflicts").asBoolean()).isTrue();
        assertThat(sets(result.path("conflicts")))
                .hasSize(8)
                .isEqualTo(sets(published.at("/conflicts/withAmountsNotNegative")));
    }

    @Test
    void one_conflict_is_shown_unless_more_are_asked_for() {
        var result = run().result();
        assertThat(sets(result.path("conflicts"))).hasSize(1);
        assertThat(result.path("allConflicts").asBoolean()).isFalse();
    }

    @Test
    void the_sodium_that_must_be_allowed_is_the_published_least() {
        var sodium = run().result()
                .path("cures")
                .valueStream()
                .filter(cure -> cure.path("path").asString().equals("/bounds/4/max"))
                .findFirst()
                .orElseThrow();
        assertThat(sodium.path("to").decimalValue()).isEqualByComparingTo("481.86");
    }

    private static Run run(String... options) {
        return Run.blend(Documents.folder(DINNERS).resolve("constraints/brief.json"), options);
    }

    private static Set<Set<String>> sets(JsonNode lists) {
        return lists.valueStream()
                .map(list -> list.valueStream().map(JsonNode::asString).collect(Collectors.toSet()))
                .map(HashSet::new)
                .collect(Collectors.toSet());
    }
}
