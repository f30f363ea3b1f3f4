package panade.report.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.assemble.QuotesResults;
import panade.certify.Decision;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.explain.conflict.Conflict;
import panade.plan.Outcome.Conflicted;
import panade.quotes.PriceComparison;
import panade.testing.Planners;

/** What is said of a list without a blend says no more than was proved. Invented. */
class QuoteReasonsTest {
    @TempDir
    private Path folder;

    @Test
    void aConflictThatIsTheSearchsWordIsNotToldAsProved() throws IOException {
        // two floors of 60 % of one batch
        var conflicted = (Conflicted) Planners.LINEAR.plan(brief());
        assertThat(reason(conflicted, true))
                .isEqualTo("shop: no blend. It cannot keep together \"lean\" (at least 60 %)"
                        + " and \"bran\" (at least 60 %).");
        assertThat(reason(conflicted, false))
                .isEqualTo("shop: no blend. By the search's word, not proved, it is \"lean\" (at least 60 %)"
                        + " and \"bran\" (at least 60 %) that it cannot keep together.");
    }

    private static String reason(Conflicted conflicted, boolean proved) {
        var found = conflicted.conflict();
        var conflict = new Conflict(
                found.sets(),
                found.complete(),
                found.separate(),
                proved,
                found.cures(),
                found.combined(),
                found.combinedCost(),
                found.open());
        var told = new Conflicted(conflicted.brief(), conflict, conflicted.proof());
        var comparison = new PriceComparison(
                List.of("shop"),
                List.of(told),
                List.of(List.of(Optional.empty())),
                new Decision.Impossible<>(),
                new Decision.Impossible<>(),
                told);
        return new QuoteReasons(QuotesResults.of(told.brief(), comparison, List.of()))
                .withoutBlend()
                .get(0);
    }

    private Brief brief() throws IOException {
        Files.writeString(
                folder.resolve("set.json"),
                "{\"ingredients\": [{\"id\": \"lean\", \"values\": {}}, {\"id\": \"bran\", \"values\": {}}]}");
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\nlean,shop,1,kg\nbran,shop,1,kg\n");
        var file = Files.writeString(folder.resolve("brief.json"), """
                {"ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "1 kg", "bounds": [
                 {"name": "lean", "ingredient": "lean", "min": "60 %"},
                 {"name": "bran", "ingredient": "bran", "min": "60 %"}]}
                """);
        return ((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value();
    }
}
