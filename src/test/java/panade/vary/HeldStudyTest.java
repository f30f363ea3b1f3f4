package panade.vary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;
import panade.testing.CommandRun;
import panade.testing.Planners;

/**
 * The cattle feed of van de Panne and Popp, Management Science 9 (1963), drawn: it holds as surely as it was asked to.
 */
class HeldStudyTest {
    private static final Path BRIEF = Path.of("src/test/resources/sure/cattle-feed/constraints/brief.json");
    private static final int DRAWS = 4_000;

    /** Four standard deviations of a share of so many draws. */
    private static double sampling(double share) {
        return 4 * Math.sqrt(share * (1 - share) / DRAWS);
    }

    @Test
    void protein_that_is_to_be_sure_is_kept_as_often_as_asked() {
        assertThat(kept(brief())).isCloseTo(.95, within(sampling(.95)));
    }

    @Test
    void protein_at_its_mean_is_kept_half_the_time() {
        assertThat(kept(brief().asStated())).isCloseTo(.5, within(sampling(.5)));
    }

    @Test
    void the_number_of_threads_changes_nothing() {
        var blended = (Blended) Planners.LINEAR.answer(brief());
        assertThat(HeldStudy.of(blended, 300, 7, 1)).isEqualTo(HeldStudy.of(blended, 300, 7, 2));
    }

    @Test
    void study_tells_it_and_draws_no_prices() {
        var told = CommandRun.of("study", BRIEF.toString(), "--draws", "400");
        assertThat(told.status()).isZero();
        assertThat(told.output()).contains("drawn 400 times", "protein", "95 %", "Prices are not drawn beside");
        var json = CommandRun.of("study", BRIEF.toString(), "--draws", "400", "--json");
        assertThat(json.output()).contains("\"draws\" : 400", "\"sure\" : 0.950015094461");
    }

    private static double kept(Brief brief) {
        var study = HeldStudy.of((Blended) Planners.LINEAR.answer(brief), DRAWS, 1, 2)
                .orElseThrow();
        var protein = study.bounds().stream()
                .filter(held -> held.bound().name().equals("protein"))
                .findFirst()
                .orElseThrow();
        // fat states no spread, so that protein alone decides
        assertThat(study.all()).isEqualTo(protein.draws());
        return protein.draws() / (double) DRAWS;
    }

    private static Brief brief() {
        return ((Reading.Accepted<Brief>) Documents.readBrief(BRIEF, Overrides.NONE)).value();
    }
}
