package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.BlendResult;
import panade.result.BoundResult;

/** Tabulates how far sure bounds keep from their numbers, and says what is not told beside them. */
final class SureTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Bound", false),
            new Column("On average", true),
            new Column("give or take", true),
            new Column("Sure", false),
            new Column("at least", true),
            new Column("at most", true),
            new Column("Unit", false));

    private SureTable() {}

    /** Whether some bound is to be sure. */
    static boolean isAbout(BlendResult result) {
        return result.bounds().get().stream().anyMatch(bound -> bound.sure() != null);
    }

    /** The table. */
    static List<Block> of(BlendResult result) {
        var rows = result.bounds().get().stream()
                .filter(bound -> bound.sure() != null)
                .map(SureTable::row)
                .toList();
        var blocks = new ArrayList<Block>(List.of(new Heading("How sure"), new Table(COLUMNS, rows)));
        if (any(result, false)) {
            blocks.add(new Paragraph("Lots differ by the spreads in the ingredient set, each value on its own (normal"
                    + " distribution); \"give or take\" is one standard deviation of a batch mixed from one lot of"
                    + " each ingredient."));
        }
        if (any(result, true)) {
            blocks.add(
                    new Paragraph("What trials taught is told of the next batch, or where the bound says so of the mean"
                            + " of many; \"give or take\" is one standard deviation of it as far as the trials tell (Student's"
                            + " distribution). The blend is kept within what was tried."));
        }
        blocks.add(
                new Paragraph("With such bounds a cheaper or dearer price moves the blend little by little, so prices"
                        + " that would change nothing, what would come in and the room to move are not told."));
        return blocks;
    }

    /** Whether some sure bound is, or is not, on what trials taught. */
    private static boolean any(BlendResult result, boolean learned) {
        return result.bounds().get().stream()
                .map(BoundResult::sure)
                .filter(Objects::nonNull)
                .anyMatch(sure -> (sure.trials() != null) == learned);
    }

    private static List<String> row(BoundResult bound) {
        var sure = Objects.requireNonNull(bound.sure());
        var value = bound.value();
        return List.of(
                bound.title(),
                value == null ? "none" : Figures.significant(value, 4),
                Figures.significant(sure.standardDeviation(), 3),
                words(sure),
                number(sure.least()),
                number(sure.most()),
                bound.unit());
    }

    /** How sure, and of what. */
    static String words(BoundResult.Sure sure) {
        var percent = Figures.significant(sure.share().multiply(100), 4) + " %";
        return sure.of() == BoundResult.Of.MEAN ? percent + ", the mean" : percent + " of batches";
    }

    private static String number(@Nullable BigFraction number) {
        return number == null ? "" : Figures.significant(number, 4);
    }
}
