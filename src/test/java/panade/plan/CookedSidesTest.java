package panade.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.explain.Explanation.Limit;
import panade.plan.Outcome.Blended;
import panade.testing.Planners;

/**
 * 10 kg of broth (all water, half of which is lost in cooking) at 1 and bean (dry, nothing lost) at 2 a kilogram. Bean
 * makes up a half of the cooked batch: b / (b + (1 - b) / 2) = 1/2 gives b = 1/3, which costs 2/3 + 2/3 = 4/3. Data
 * invented.
 */
class CookedSidesTest {
    private static final Planner PLANNER = Planners.LINEAR;

    @TempDir
    private Path folder;

    @BeforeEach
    void writeDocuments() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "two", "source": "invented", "ingredients": [
                  {"id": "broth", "values": {"WATER": 100, "FAT": 0}, "others": 0, "allergens": []},
                  {"id": "bean", "values": {"WATER": 0, "FAT": 10}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\nbroth,a,1,kg\nbean,a,2,kg\n");
    }

    @Test
    void an_idle_weight_beside_a_share_of_the_cooked_batch_moves_nothing() throws IOException {
        var alone = plan("\"min\": \"50 %\"");
        var both = plan("\"min\": \"50 %\", \"max\": \"9 kg\"");
        assertThat(alone.blend().costPerKg()).isEqualTo(BigFraction.of(4, 3));
        assertThat(both.blend().costPerKg()).isEqualTo(BigFraction.of(4, 3));
        assertThat(both.blend().shareOf("bean")).isEqualTo(BigFraction.of(1, 3));
    }

    @Test
    void a_share_of_the_cooked_batch_is_told_as_the_weight_it_is_of_this_one() throws IOException {
        // 10 kg cook down to 6.667 kg, half of which is 3.333 kg, all of the bean there is
        var limit = limit(plan("\"min\": \"50 %\", \"max\": \"9 kg\""));
        assertThat(limit.unit().symbol()).isEqualTo("kg");
        assertThat(limit.value()).isEqualTo(BigFraction.of(10, 3));
        assertThat(limit.min()).isEqualTo(BigFraction.of(10, 3));
        assertThat(limit.max()).isEqualTo(BigFraction.of(9));
    }

    @Test
    void a_share_as_the_most_holds_beside_a_weight_as_the_least() throws IOException {
        // 4 kg of bean: 4 of 7 cooked kilograms are 57.1 %, and 55 % as the most cannot be kept
        assertThat(PLANNER.plan(brief("\"min\": \"4 kg\", \"max\": \"55 %\""))).isInstanceOf(Outcome.Conflicted.class);
        assertThat(plan("\"min\": \"4 kg\", \"max\": \"58 %\"").blend().shareOf("bean"))
                .isEqualTo(BigFraction.of(2, 5));
    }

    @Test
    void what_a_choice_can_cost_at_least_is_told_per_cooked_kilogram() throws IOException {
        // with bean at 3, (1 + 2 b) / ((1 + b) / 2) is least where b is least: a trace, .0001
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\nbroth,a,1,kg\nbean,a,3,kg\n");
        var blended = (Blended) PLANNER.plan(brief("\"max\": \"90 %\"", """
                "costBasis": "cooked",
                "rules": [{"choose": {"ingredient": ["broth", "bean"]}, "min": 2}],
                """));
        var cost = BigFraction.of(20_004, 10_001);
        assertThat(blended.blend().costPerKg()).isEqualTo(cost);
        var choice = Objects.requireNonNull(blended.choice());
        assertThat(choice.closed()).isTrue();
        assertThat(choice.bound()).isEqualTo(cost);
        assertThat(choice.gap(cost)).isEqualTo(BigFraction.ZERO);
    }

    private static Limit limit(Blended blended) {
        return blended.explanation().limits().stream()
                .filter(limit -> limit.path().equals("/bounds/0"))
                .findFirst()
                .orElseThrow();
    }

    private Blended plan(String limits) throws IOException {
        return (Blended) PLANNER.plan(brief(limits));
    }

    private Brief brief(String limits) throws IOException {
        return brief(limits, "");
    }

    private Brief brief(String limits, String more) throws IOException {
        var file = Files.writeString(folder.resolve("brief.json"), """
                {"title": "two", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", %s "cooking": {"lose": {"WATER": "50 %%"}},
                 "bounds": [{"ingredient": "bean", "state": "cooked", %s}]}
                """.formatted(more, limits));
        var reading = Documents.readBrief(file, Overrides.NONE);
        if (reading instanceof Reading.Rejected<Brief> rejected) {
            throw new AssertionError(rejected.problems().toString());
        }
        return Objects.requireNonNull(((Reading.Accepted<Brief>) reading).value());
    }
}
