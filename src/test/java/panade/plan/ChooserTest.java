package panade.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.certify.Branching;
import panade.certify.Decision;
import panade.certify.Prover;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.model.LinearModel;
import panade.model.LinearModel.Column;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.MixedModel;
import panade.model.Unproved;
import panade.solver.Deadline;
import panade.solver.MixedAnswer;
import panade.solver.MixedSolver;

/** What is told where the proof ends before every choice is ruled out. */
class ChooserTest {
    /** Two switches together at least three halves: both must be one, which costs 2; the relaxation costs 3/2. */
    private static final MixedModel BOTH = model(BigFraction.of(3, 2));

    @Test
    void a_proof_that_ends_early_is_neither_a_point_nor_that_there_is_none() {
        assertThat(chooser(1).cheapestPoint(BOTH)).isInstanceOf(Decision.Undecided.class);
    }

    @Test
    void a_proof_that_ends_finds_the_point() {
        assertThat(chooser(100).cheapestPoint(BOTH))
                .isEqualTo(new Decision.Found<>(List.of(BigFraction.ONE, BigFraction.ONE)));
    }

    @Test
    void what_no_setting_allows_is_impossible() {
        assertThat(chooser(100).cheapestPoint(model(BigFraction.of(5, 2)))).isInstanceOf(Decision.Impossible.class);
    }

    @Test
    void too_many_choices_are_not_told_as_no_blend(@TempDir Path folder) throws IOException {
        // no two of three, of which each makes up 70 % at most: half a switch each would do, whole ones cannot
        var brief = brief(folder, "70 %");
        assertThatThrownBy(() -> chooser(1).choose(brief))
                .isInstanceOf(Unproved.class)
                .hasMessageContaining("no blend was found, nor all were ruled out");
        assertThat(chooser(100).choose(brief).<Boolean>fold(chosen -> false, Contradiction.RuledOut.class::isInstance))
                .isTrue();
    }

    @Test
    void a_search_that_left_something_open_is_no_proof_that_there_is_no_blend() {
        var open = new Branching.Proof(BigFraction.ONE, Optional.empty(), 1);
        assertThatThrownBy(() -> new Contradiction.RuledOut(open)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_choice_that_the_search_did_not_find_does_not_bear_its_name(@TempDir Path folder) throws IOException {
        var engine = chooser(100)
                .choose(brief(folder, "100 %"))
                .fold(chosen -> chosen.choice().engine(), proof -> "none");
        assertThat(engine).isEqualTo("branching");
    }

    private static Chooser chooser(int maxBranches) {
        return new Chooser(
                Prover.EXACT, new Silent(), BigFraction.ZERO, Deadline.in(Chooser.TIME), maxBranches, maxBranches);
    }

    private static MixedModel model(BigFraction least) {
        var rows = List.of(
                new Row("together", Map.of(0, BigFraction.ONE, 1, BigFraction.ONE), Sense.AT_LEAST, least),
                new Row("a", Map.of(0, BigFraction.ONE), Sense.AT_MOST, BigFraction.ONE),
                new Row("b", Map.of(1, BigFraction.ONE), Sense.AT_MOST, BigFraction.ONE));
        var columns = List.of(new Column("a", BigFraction.ONE), new Column("b", BigFraction.ONE));
        return new MixedModel(new LinearModel(columns, rows), Set.of(0, 1));
    }

    private static Brief brief(Path folder, String most) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"title": "three", "source": "invented", "ingredients": [
                  {"id": "a", "values": {}, "others": 0, "allergens": []},
                  {"id": "b", "values": {}, "others": 0, "allergens": []},
                  {"id": "c", "values": {}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(
                folder.resolve("prices.csv"), "ingredient,supplier,price,per\na,x,1,kg\nb,x,1,kg\nc,x,1,kg\n");
        var file = Files.writeString(folder.resolve("brief.json"), """
                {"title": "three", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", "rules": [{"neverTogether": ["a", "b"]}, {"neverTogether": ["b", "c"]}, {"neverTogether": ["a", "c"]}],
                 "bounds": [{"ingredient": "a", "max": "%1$s"}, {"ingredient": "b", "max": "%1$s"},
                            {"ingredient": "c", "max": "%1$s"}]}
                """.formatted(most));
        return ((Reading.Accepted<Brief>) Documents.readBrief(file, Overrides.NONE)).value();
    }

    /** A search that finds nothing. */
    private static final class Silent implements MixedSolver {
        @Override
        public String name() {
            return "silent";
        }

        @Override
        public MixedAnswer solve(MixedModel model, Duration limit) {
            return new MixedAnswer.Undecided("nothing was found");
        }

        @Override
        public void interrupt() {
            // nothing ever runs
        }
    }
}
