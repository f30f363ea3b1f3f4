package panade.assemble.formula;

import java.util.List;
import java.util.stream.Stream;
import panade.assemble.BatchResults;
import panade.assemble.RemarkLines;
import panade.audit.Audit;
import panade.bench.BatchSheet;
import panade.bench.MoveAtMost;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.nudge.Start;
import panade.quantity.Decimal;
import panade.result.BatchResult;
import panade.result.BatchResult.Line;
import panade.result.formula.MadeBatchResult;
import panade.result.formula.MadeBatchResult.Moved;

/** Makes the result of {@code batch} for a formula. */
public final class MadeBatchResults {
    private MadeBatchResults() {}

    /** The sheet of a formula as it is made. */
    public static MadeBatchResult of(String title, Start start, BatchSheet weighed, MoveAtMost most) {
        var brief = start.brief();
        var sheet = BatchResults.of(weighed).sheet();
        return new MadeBatchResult(
                sheet,
                most.most() == null ? null : most.most().text(),
                sheet.lines().stream().flatMap(line -> moved(line, brief)).toList(),
                sheet.fails().stream()
                        .map(BatchResult.Fail::path)
                        .filter(brokenAsMade(start)::contains)
                        .toList(),
                new Audit(brief, weighed.weighed()).brokenRules(),
                start.unsold().stream()
                        .map(id -> brief.set().ingredient(id).name())
                        .toList(),
                null,
                RemarkLines.of(brief.remarks()),
                title);
    }

    /** A rounded weight may break the other side of a bound, which the formula does not. */
    private static List<String> brokenAsMade(Start start) {
        var audit = new Audit(start.brief(), start.blend());
        var bounds = start.brief().bounds().stream()
                .filter(audit::isKnown)
                .filter(bound -> !audit.isKept(bound))
                .map(bound -> side(bound, audit));
        var goods = start.blend().lines().stream()
                .map(Blend.Line::offer)
                .filter(audit::isShort)
                .map(offer -> offer.ingredient() + " available " + offer.supplier());
        return Stream.concat(bounds, goods).toList();
    }

    private static String side(Bound bound, Audit audit) {
        var min = bound.min();
        boolean low = min != null && audit.slack(bound, min, true).signum() < 0;
        return bound.path() + (low ? "/min" : "/max");
    }

    private static Stream<Moved> moved(Line line, Brief brief) {
        var plain = Decimal.of(Decimal.round(line.exact().divide(line.stepGrams()), 0))
                .multiply(line.stepGrams());
        return plain.equals(line.grams())
                ? Stream.empty()
                : Stream.of(new Moved(
                        line.stage(),
                        line.ingredient(),
                        line.exact(),
                        plain,
                        line.grams(),
                        line.name(),
                        title(line.stage(), brief)));
    }

    private static String title(String stage, Brief brief) {
        return brief.stages().stream()
                .filter(each -> each.id().equals(stage))
                .map(Stage::title)
                .findFirst()
                .orElse(stage);
    }
}
