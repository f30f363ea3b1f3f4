package panade.report.question;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import panade.quantity.Decimal;
import panade.render.TextRenderer;
import panade.result.ShareLine;
import panade.result.TraceResult;
import panade.result.TraceResult.BoundNumber;
import panade.result.TraceResult.End;
import panade.result.TraceResult.Kind;
import panade.result.TraceResult.Point;
import panade.result.TraceResult.Segment;

/** What is told of a curve with a jump at 2 from oats to bran. Invented. */
class TraceReportTest {
    private static final List<ShareLine> OATS = List.of(line("oats"));
    private static final List<ShareLine> BRAN = List.of(line("bran"));

    private static final TraceResult CURVE = new TraceResult(
            new BoundNumber("fibre", "/bounds/0/min", "%", false),
            number("1"),
            false,
            End.ASKED,
            End.NO_BLEND,
            List.of(
                    point("1", "1", null, OATS),
                    point("2", "1", null, OATS),
                    point("2", "3", Kind.JUST_ABOVE, BRAN),
                    point("4", "3", null, BRAN)),
            List.of(segment("1", "2", 0, OATS), segment("2", "4", 2, BRAN)),
            List.of(),
            "loaf",
            "",
            List.of());

    @Test
    void aJumpIsToldWithBothCostsAndWhatTakesOver() {
        assertThat(TraceReport.changes(CURVE))
                .containsExactly("just above 2: the cost jumps from 0.4536 to 1.3608/lb; Bran comes in, +100.00 %;"
                        + " Oats leaves, -100.00 %");
    }

    @Test
    void theEndsAreToldWithWhyTheyAre() {
        var words = TextRenderer.render(TraceReport.of(CURVE)).replaceAll("\\s+", " ");
        assertThat(words)
                .contains("loaf: fibre", "The blend changes once from 1 to 4 %; now it is 1.")
                .contains("Above that no blend is left.")
                .doesNotContain("Below that");
    }

    private static ShareLine line(String id) {
        var name = id.substring(0, 1).toUpperCase(Locale.ROOT) + id.substring(1);
        return new ShareLine(id, "mix", "mill", BigFraction.ONE, name);
    }

    private static Point point(String at, String cost, @Nullable Kind kind, List<ShareLine> blend) {
        return new Point(new BigDecimal(at), number(cost), kind, number(at), RoundingMode.HALF_EVEN, blend);
    }

    private static Segment segment(String from, String to, int point, List<ShareLine> blend) {
        return new Segment(
                new BigDecimal(from),
                new BigDecimal(to),
                BigFraction.ZERO,
                BigFraction.ZERO,
                blend,
                point,
                blend,
                blend);
    }

    private static BigFraction number(String text) {
        return Decimal.of(text);
    }
}
