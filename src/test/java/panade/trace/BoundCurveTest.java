package panade.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.assemble.TraceResults;
import panade.domain.Side;
import panade.plan.Planner;
import panade.render.TextRenderer;
import panade.report.question.TraceReport;
import panade.testing.Planners;
import panade.testing.SmallKitchen;
import panade.trace.Curve.End;
import panade.trace.Curve.Kind;
import panade.trace.Curve.Point;

/** Curves over a bound's number; worked out by hand. */
class BoundCurveTest {
    private static final Planner PLANNER = Planners.LINEAR;

    /** As in {@link BoundOfNothingTest}: mince up to a chew of 7 for 0.40, powder at any for 1.20. */
    private static SmallKitchen chewedAt(String number) {
        return new SmallKitchen(
                """
                {"id": "water", "values": {"PROCNT": 0}}, {"id": "powder", "values": {"PROCNT": 50}},
                {"id": "mince", "kinds": ["texturate"], "values": {"PROCNT": 50, "bite": 7}}
                """,
                "water,tap,0,kg,\npowder,north,3.00,kg,\nmince,north,1.00,kg,\n",
                "{\"property\": \"PROCNT\", \"min\": \"20 %\"},"
                        + "{\"property\": \"bite\", \"within\": {\"kind\": \"texturate\"},"
                        + " \"per\": {\"kind\": \"texturate\"}, \"min\": " + number + "}",
                "");
    }

    @Test
    void aJumpIsToldAsAJumpFromEitherSide() {
        for (var number : new String[] {"6", "7", "7.3"}) {
            var curve = curve(chewedAt(number), 1, Side.MIN, number("6"), number("8"));
            var here = curve.points().stream()
                    .filter(point -> point.at().equals(number("7")))
                    .toList();
            assertThat(here).extracting(Point::costPerKg).containsExactly(number("0.4"), number("1.2"));
            assertThat(here).extracting(Point::kind).containsExactly(Kind.TURN, Kind.JUST_ABOVE);
            assertThat(curve.segments()).allMatch(segment -> segment.slope().signum() == 0);
            assertThat(curve.segments().get(0).from()).isEqualTo(number("6"));
            assertThat(curve.segments().get(1).to()).isEqualTo(number("8"));
            assertThat(TraceReport.changes(TraceResults.of(curve)))
                    .containsExactly("just above 7: the cost jumps from 0.1814 to 0.5443/lb;"
                            + " mince leaves, -40.00 %; powder comes in, +40.00 %");
        }
    }

    @Test
    void aCurveWithoutEndsIsShownALittleBeyondTheJump() {
        var curve = curve(chewedAt("7"), 1, Side.MIN, null, null);
        assertThat(curve.points()).extracting(Point::at).containsExactly(number("7"), number("7"), number("7.7"));
        assertThat(curve.low()).isEqualTo(End.NOTHING_CHANGES);
        assertThat(curve.high()).isEqualTo(End.NOTHING_CHANGES);
    }

    @Test
    void aJumpAtTheEndOfACurveIsToldToo() {
        var jump = "just above 7: the cost jumps from 0.1814 to 0.5443/lb; mince leaves, -40.00 %; powder comes in,"
                + " +40.00 %";
        var upward = curve(chewedAt("7"), 1, Side.MIN, null, null);
        assertThat(TraceReport.changes(TraceResults.of(upward))).containsExactly(jump);
        assertThat(TraceReport.turns(TraceResults.of(upward))).isEqualTo(1);
        var kitchen = chewedAt("7");
        var ceiling = kitchen.withBounds(kitchen.bounds().replace("\"min\": 7", "\"max\": 7"));
        var downward = curve(ceiling, 1, Side.MAX, null, null);
        assertThat(downward.points()).extracting(Point::kind).containsExactly(Kind.TURN, Kind.JUST_BELOW, Kind.TURN);
        assertThat(TraceReport.changes(TraceResults.of(downward)))
                .containsExactly("at 7, but not below: the cost jumps from 0.5443 to 0.1814/lb;"
                        + " mince comes in, +40.00 %; powder leaves, -40.00 %");
    }

    /** Water is free; "a" carries 50 g of protein at 1.00, at most 20 % of it; "b" carries 50 at 2.00. */
    private static final SmallKitchen CHEAP_THEN_DEAR = new SmallKitchen(
            """
            {"id": "water", "values": {"PROCNT": 0}}, {"id": "a", "values": {"PROCNT": 50}, "maxUse": "20 %"},
            {"id": "b", "values": {"PROCNT": 50}}, {"id": "c", "values": {"PROCNT": 100}}
            """,
            "water,tap,0,kg,\na,north,1.00,kg,\nb,north,2.00,kg,\nc,north,9.00,kg,\n",
            "{\"property\": \"PROCNT\", \"min\": \"15 %\"}",
            "");

    @Test
    void anIngredientBeginsToComeInOnceAndNotAgain() {
        // up to 10 % all is a; from there b until a and b fill the batch at 50 %; beyond, c drives b out
        var curve = curve(CHEAP_THEN_DEAR, 0, Side.MIN, number("0"), null);
        assertThat(TraceReport.changes(TraceResults.of(curve)))
                .satisfiesExactly(
                        line -> assertThat(line)
                                .startsWith("at 10: b begins to come in; from here to 50 ")
                                .doesNotContain("a +"),
                        line -> assertThat(line)
                                .startsWith("at 50: ")
                                .contains("c begins to come in", "water has left")
                                .doesNotContain("b begins"),
                        line -> assertThat(line).startsWith("at 90: b has left"));
        assertThat(curve.high()).isEqualTo(End.NO_BLEND);
    }

    @Test
    void aNumberMovesInItsOwnUnitUpToTheOtherOne() {
        var kitchen =
                CHEAP_THEN_DEAR.withBounds("{\"property\": \"PROCNT\", \"min\": \"150 g/kg\", \"max\": \"60 %\"}");
        var curve = curve(kitchen, 0, Side.MIN, number("0"), null);
        assertThat(curve.points())
                .extracting(Point::at)
                .containsExactly(number("0"), number("100"), number("500"), number("600"));
        assertThat(curve.high()).isEqualTo(End.NO_BLEND);
    }

    @Test
    void betweenItsPointsARatiosCostIsWhatItsBendSays() {
        // protein per fat: a holds 10 to 10 at 1.00, b 60 to 20 at 3.00
        var kitchen = new SmallKitchen(
                """
                {"id": "a", "values": {"PROCNT": 10, "FAT": 10}}, {"id": "b", "values": {"PROCNT": 60, "FAT": 20}}
                """,
                "a,north,1.00,kg,\nb,north,3.00,kg,\n",
                "{\"property\": \"PROCNT\", \"per\": {\"property\": \"FAT\"}, \"min\": 2}",
                "");
        var curve = curve(kitchen, 0, Side.MIN, number("1"), number("3"));
        // x of b: (10 + 50 x) = r (10 + 10 x), so x = (r - 1) / (5 - r); at 2.5 that is 0.6, at 2 a third
        for (int i = 0; i < curve.segments().size(); i++) {
            var segment = curve.segments().get(i);
            var middle =
                    segment.from().add(Objects.requireNonNull(segment.to())).divide(2);
            var x = middle.subtract(1).divide(middle.subtract(5).negate());
            var start =
                    segment.from().subtract(1).divide(segment.from().subtract(5).negate());
            assertThat(segment.rise(middle)).isEqualTo(x.subtract(start).multiply(2));
            assertThat(segment.bend().signum()).isPositive();
        }
        assertThat(curve.points().stream().filter(point -> point.kind() == Kind.BETWEEN))
                .isNotEmpty();
    }

    @Test
    void aCostThatStaysIsNotToldToBend() {
        // flat at 0.4 up to a chew of 7 and at 1.2 above; of one point there is no between at all
        assertThat(said(curve(chewedAt("7"), 1, Side.MIN, number("6"), number("8"))))
                .doesNotContain("bends");
        assertThat(said(curve(chewedAt("7"), 1, Side.MIN, number("7"), number("7"))))
                .doesNotContain("bends");
        // protein per fat of a (1) and b (3): from 1 to 3 the share of b is (r - 1) / (5 - r)
        var bent = new SmallKitchen(
                "{\"id\": \"a\", \"values\": {\"PROCNT\": 10, \"FAT\": 10}},"
                        + " {\"id\": \"b\", \"values\": {\"PROCNT\": 60, \"FAT\": 20}}",
                "a,north,1.00,kg,\nb,north,3.00,kg,\n",
                "{\"property\": \"PROCNT\", \"per\": {\"property\": \"FAT\"}, \"min\": 2}",
                "");
        assertThat(said(curve(bent, 0, Side.MIN, number("1"), number("3")))).contains("the cost bends a little");
    }

    private static String said(Curve curve) {
        return TextRenderer.render(TraceReport.of(TraceResults.of(curve))).replaceAll("\\s+", " ");
    }

    private static Curve curve(
            SmallKitchen kitchen, int bound, Side side, @Nullable BigFraction from, @Nullable BigFraction to) {
        var brief = kitchen.brief();
        return BoundTracing.of(PLANNER, brief, brief.bounds().get(bound), side, from, to)
                .orElseThrow();
    }

    private static BigFraction number(String text) {
        return SmallKitchen.number(text);
    }
}
