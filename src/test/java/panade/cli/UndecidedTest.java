package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import panade.assemble.QuotesResults;
import panade.assemble.SwapResults;
import panade.certify.Decision;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.export.ResultJson;
import panade.plan.Outcome;
import panade.plan.Planner;
import panade.quotes.PriceComparison;
import panade.render.TextRenderer;
import panade.report.question.QuotesReport;
import panade.report.question.SwapReport;
import panade.substitute.Substitution;
import panade.substitute.Substitution.StandIn;
import panade.testing.CommandRun;
import panade.testing.Planners;

/** Not to know is told as such: never as a blend, as no blend, or as a fault of the program. */
class UndecidedTest {
    private static final Planner PLANNER = Planners.LINEAR;
    private static final String REASON = "the search ran out of patience";

    @TempDir
    private Path folder;

    @BeforeEach
    void writeDocuments() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "two", "source": "invented", "ingredients": [
                  {"id": "stock", "values": {"WATER": 100, "PROCNT": 0}, "others": 0, "allergens": []},
                  {"id": "bean", "values": {"WATER": 0, "PROCNT": 20}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), "ingredient,supplier,price,per\nstock,a,1,kg\nbean,a,3,kg\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"blend", "batch", "panel"})
    void a_cost_per_nothing_left_after_cooking_is_not_decided(String command) throws IOException {
        // all of the stock boils away, and nothing else can be bought that is cheaper raw
        var brief = write("""
                "cooking": {"lose": {"WATER": "100 %"}}, "costBasis": "cooked",
                """, "{\"ingredient\": \"bean\", \"max\": \"0 %\"}");
        var run = CommandRun.of(command, brief.toString());
        assertThat(run.messages())
                .contains("Not decided")
                .contains("no blend was found that weighs anything once it is cooked");
        assertThat(run.status()).isEqualTo(6);
        var json = CommandRun.of(command, brief.toString(), "--json");
        assertThat(json.status()).isEqualTo(6);
        assertThat(json.output())
                .contains("\"undecided\"")
                .contains("no blend was found that weighs anything once it is cooked");
    }

    @Test
    void a_blend_that_fails_when_measured_again_is_not_printed() throws IOException {
        var brief = brief();
        var blend = PLANNER.cheapest(brief).orElseThrow();
        assertThat(Planner.measured(brief, blend)).isEqualTo(new Decision.Found<>(blend));
        var twice = new ArrayList<>(blend.lines());
        twice.addAll(blend.lines());
        var told = Planner.measured(brief, new Blend(twice, BigFraction.ONE))
                .fold(found -> "found", () -> "impossible", reason -> reason);
        assertThat(told).contains("measured again").contains("add up to 2");
    }

    @Test
    void quotes_tell_what_is_not_known_as_not_known() throws IOException {
        var brief = brief();
        var known = PLANNER.answer(brief);
        var open = new Outcome.Undecided(brief, REASON);
        var comparison = new PriceComparison(
                List.of("spring", "autumn"),
                List.of(known, open),
                List.of(List.of(Optional.empty(), Optional.empty()), List.of(Optional.empty(), Optional.empty())),
                new Decision.Undecided<>(REASON),
                new Decision.Undecided<>(REASON),
                open);
        var words = TextRenderer.render(QuotesReport.of(QuotesResults.of(brief, comparison, List.of())));
        assertThat(words)
                .doesNotContain("there is no blend", "No one blend", "allows no blend")
                .contains(REASON);
        assertThat(words.replaceAll("\\s+", " "))
                .contains("Whether there is a blend when bought from all together could not be decided")
                .contains("autumn not known")
                .contains("The safest blend under every list is not known");
        assertThat(words.lines().filter(line -> line.startsWith("autumn")))
                .allMatch(line -> line.contains("not known"));
        assertThat(ResultJson.text(QuotesResults.of(brief, comparison.explained(), List.of())))
                .contains("\"undecided\"")
                .contains(REASON);
    }

    @Test
    void quotes_tell_what_is_impossible_as_impossible() throws IOException {
        var brief = brief();
        var none = PLANNER.answer(brief("{\"property\": \"PROCNT\", \"min\": \"30 %\"}"));
        var comparison = new PriceComparison(
                List.of("spring", "autumn"),
                List.of(none, none),
                List.of(List.of(Optional.empty(), Optional.empty()), List.of(Optional.empty(), Optional.empty())),
                new Decision.Impossible<>(),
                new Decision.Impossible<>(),
                none);
        var words = TextRenderer.render(QuotesReport.of(QuotesResults.of(brief, comparison, List.of())))
                .replaceAll("\\s+", " ");
        assertThat(words)
                .contains("No list alone allows a blend. Bought from all together there is no blend.")
                .doesNotContain("not known", "decided");
    }

    @Test
    void a_swap_that_is_not_decided_is_not_told_as_none() throws IOException {
        var brief = brief();
        var before = (Outcome.Blended) PLANNER.answer(brief);
        var swap = new Substitution(
                Set.of("bean"),
                before,
                new Outcome.Undecided(brief, REASON),
                List.of(new StandIn("stock", null, BigFraction.ZERO, null, REASON)));
        var words = TextRenderer.render(SwapReport.of(SwapResults.of(swap))).replaceAll("\\s+", " ");
        assertThat(words)
                .contains("Whether anything can replace it could not be decided: " + REASON)
                .contains("Without it nothing is proved")
                .doesNotContain("None can", "more than one bound gives", "none");
        assertThat(ResultJson.text(SwapResults.of(swap.explained())))
                .contains("\"undecided\"")
                .doesNotContain("fails");
    }

    private Brief brief() throws IOException {
        return brief("{\"property\": \"PROCNT\", \"min\": \"10 %\"}");
    }

    private Brief brief(String bound) throws IOException {
        return ((Reading.Accepted<Brief>) Documents.readBrief(write("", bound), Overrides.NONE)).value();
    }

    private Path write(String more, String bound) throws IOException {
        return Files.writeString(folder.resolve("brief.json"), """
                {"title": "two", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", %s "bounds": [%s]}
                """.formatted(more, bound));
    }
}
