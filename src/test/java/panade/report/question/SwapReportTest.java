package panade.report.question;

import static org.assertj.core.api.Assertions.assertThat;
import static panade.testing.Loaves.number;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.render.TextRenderer;
import panade.result.BriefResult;
import panade.result.LabelChangeResult;
import panade.result.SwapResult;
import panade.result.SwapResult.AllergenChange;
import panade.result.SwapResult.Amount;
import panade.result.SwapResult.Changes;
import panade.result.SwapResult.Fails;
import panade.result.SwapResult.Failure;
import panade.result.SwapResult.Open;
import panade.result.SwapResult.StandIn;
import panade.result.SwapResult.Works;
import panade.testing.Loaves;

/** What is told of a loaf whose oats are out. Invented. */
class SwapReportTest {
    private static final AllergenChange NONE = new AllergenChange(List.of(), List.of(), List.of());
    private static final LabelChangeResult LABEL = new LabelChangeResult(
            new LabelChangeResult.Names(List.of("rye"), List.of("oats"), false),
            new LabelChangeResult.Allergens(List.of(), List.of(), List.of()),
            List.of());

    @Test
    void the_difference_in_cost_has_its_sign() {
        assertThat(words(swap(Loaves.costing("4.40924524"), List.of(), NONE)))
                .contains("loaf: Oats out")
                .contains("The best blend without it costs 2.0000 USD/lb instead of 1.0000: +1.0000 USD/lb.");
    }

    @Test
    void what_could_not_be_decided_is_not_said_to_be_proved() {
        assertThat(words(swap(BriefResult.Undecided.because("the time was over"), List.of(), null)))
                .contains("Whether anything can replace it could not be decided: the time was over.")
                .contains("Without it nothing is proved.")
                .doesNotContain("with it and without");
    }

    @Test
    void each_stand_in_says_what_it_costs_or_what_it_fails_at() {
        var standIns = List.<StandIn>of(
                new Works(
                        "rye",
                        number("0.125"),
                        number("2.42508488"),
                        number("0.22046226"),
                        new AllergenChange(List.of("rye"), List.of(), List.of()),
                        List.of("rye"),
                        "Rye"),
                new Fails("rice", new Failure("/bounds/0/min", null, "fibre", number("2"), number("5"), "%"), "Rice"),
                new Open("spelt", "the time was over", "Spelt"));
        assertThat(words(swap(Loaves.costing("2.3"), standIns, NONE)))
                .contains("Rye 12.50 1.1000 +0.1000 adds rye", "Rice none fibre: 2 of 5 %")
                .contains("Spelt not known the time was over");
    }

    @Test
    void allergens_that_come_and_go_are_both_told() {
        assertThat(words(swap(
                        Loaves.costing("2.3"),
                        List.of(),
                        new AllergenChange(List.of("soya"), List.of("gluten"), List.of()))))
                .contains("Allergens added: soya; gone: gluten.");
    }

    private static SwapResult swap(BriefResult after, List<StandIn> standIns, @Nullable AllergenChange allergens) {
        var changes = allergens == null
                ? null
                : new Changes(
                        List.of(new Amount("Oats", number("1.5"), number("0"))),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of("rye"));
        return new SwapResult(
                List.of("oats"),
                Loaves.costing("2.20462262"),
                after,
                standIns,
                allergens,
                allergens == null ? null : LABEL,
                List.of(),
                List.of("Oats"),
                changes);
    }

    private static String words(SwapResult swap) {
        return TextRenderer.render(SwapReport.of(swap)).replaceAll("[ \n]+", " ");
    }
}
