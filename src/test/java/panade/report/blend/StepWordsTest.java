package panade.report.blend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import panade.assemble.BlendResults;
import panade.cost.OptionalSections;
import panade.render.TextRenderer;
import panade.testing.SmallKitchen;

/** What is said of a round step of a number is what typing the moved number gives; worked out by hand. */
class StepWordsTest {
    /**
     * Chew of the mince: tough scores 8 at 4.00, soft scores 7 at 1.00; a fifth of the batch is mince. From 7 on each
     * 0.1 of the score swaps a tenth of the mince, 2 % of the batch, at 3.00: 0.06 a kilogram, 0.027 a pound.
     */
    private static SmallKitchen chew(String least) {
        return new SmallKitchen(
                """
                {"id": "water", "values": {}},
                {"id": "soft", "kinds": ["texturate"], "values": {"bite": 7}},
                {"id": "tough", "kinds": ["texturate"], "values": {"bite": 8}}
                """,
                "water,tap,0,kg,\nsoft,north,1.00,kg,\ntough,north,4.00,kg,\n",
                "{\"kind\": \"texturate\", \"min\": \"20 %\", \"max\": \"20 %\"},"
                        + "{\"name\": \"chew\", \"property\": \"bite\", \"within\": {\"kind\": \"texturate\"},"
                        + " \"per\": {\"kind\": \"texturate\"}, \"min\": " + least + "}",
                "\"currency\": \"USD\",");
    }

    @Test
    void aStepIsNotLongerThanItsRateHolds() {
        // 0.031 above 7 a whole tenth less saves no more than 0.031 x 0.6 = 0.0186 a kilogram; a fiftieth 0.012
        var said = said(chew("7.031"));
        assertThat(said).contains("chew, at its least 7.031: each 0.02 less asked would save 0.0054 USD/lb;");
        assertThat(chew("7.031").cost().subtract(chew("7.011").cost())).isEqualTo(SmallKitchen.number("0.012"));
    }

    @Test
    void whereNoRoundPartHoldsTheStepItselfIsTold() {
        // 0.00001 above 7: nothing round is left of the rate, and a tenth less saves 0.000006 a kilogram
        var said = said(chew("7.00001"));
        assertThat(said).contains("chew, at its least 7: 0.1 less asked would save 0.0000027 USD/lb; each 0.1 more");
    }

    @Test
    void aStepAcrossTheEndOfARateIsNotToldAsEach() {
        // 8 is the last score there is: 7.95 leaves half a step
        var said = said(chew("7.95"));
        assertThat(said).contains("chew, at its least 7.95: each 0.1 less asked would save 0.027 USD/lb");
        assertThat(said(chew("8"))).contains("0.1 more asked leaves no blend");
    }

    @Test
    void aJumpIsToldAsOne() {
        // without the tenth that must be mince, a kilogram of "other" at 9.00 for "soft" at 1.00 does as well
        var kitchen = new SmallKitchen(
                """
                {"id": "soft", "kinds": ["texturate"], "values": {"bite": 7}}, {"id": "other", "values": {}}
                """,
                "soft,north,1.00,kg,\nother,north,9.00,kg,\n",
                "{\"name\": \"chew\", \"property\": \"bite\", \"within\": {\"kind\": \"texturate\"},"
                        + " \"per\": {\"kind\": \"texturate\"}, \"min\": 7}",
                "\"currency\": \"USD\",");
        assertThat(said(kitchen))
                .contains("chew, at its least 7: each 0.1 less asked changes nothing;"
                        + " any more asked would cost 3.6 USD/lb at once, however little.");
    }

    private static String said(SmallKitchen kitchen) {
        return TextRenderer.render(
                        BlendReport.of(BlendResults.withMoves(kitchen.blended(), OptionalSections.NONE), true))
                .lines()
                .map(String::strip)
                .collect(Collectors.joining(" "));
    }
}
