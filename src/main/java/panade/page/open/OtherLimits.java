package panade.page.open;

import java.util.List;
import panade.domain.LimitKind;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.blend.LimitTable;
import panade.result.BlendResult;
import panade.result.BoundResult;
import panade.result.BriefResult;

/** Limits that no field stands for: of the ingredient set, the price lists, the rules and a printed label. */
final class OtherLimits {
    private static final List<Column> COLUMNS = List.of(
            new Column("Limit", false),
            new Column("Value", true),
            new Column("Least", true),
            new Column("Most", true),
            new Column("", false));

    private OtherLimits() {}

    /** A table of those that the blend comes near; nothing where there is none. */
    static List<Block> of(BriefResult result) {
        if (!(result instanceof BlendResult blend)) {
            return List.of();
        }
        var rows = LimitTable.shown(blend.bounds().get()).stream()
                .filter(bound -> bound.kind() != LimitKind.BRIEF && bound.kind() != LimitKind.STAGE)
                .map(OtherLimits::row)
                .toList();
        return rows.isEmpty() ? List.of() : List.of(new Table(COLUMNS, rows));
    }

    private static List<String> row(BoundResult bound) {
        var touch = OpenViews.touch(bound.binding());
        var words = OpenViews.words(bound);
        return List.of(
                bound.title(),
                OpenViews.value(bound),
                bound.min() == null ? "" : Figures.with(bound.min(), bound.unit()),
                bound.max() == null ? "" : Figures.with(bound.max(), bound.unit()),
                touch.isEmpty() || words.isEmpty() ? touch + words : touch + ": " + words);
    }
}
