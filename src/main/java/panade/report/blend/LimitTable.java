package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.BoundResult;

/** Tabulates bounds; ceilings of the pantry and the price lists are shown only where the blend comes near them. */
public final class LimitTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Bound", false),
            new Column("Value", true),
            new Column("Least", true),
            new Column("Most", true),
            new Column("Margin", true),
            new Column("Unit", false),
            new Column("", false));

    private LimitTable() {}

    static List<Block> of(List<BoundResult> limits) {
        var shown = shown(limits);
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("Every bound"));
        blocks.add(new Table(COLUMNS, shown.stream().map(LimitTable::row).toList()));
        int hidden = limits.size() - shown.size();
        if (hidden > 0) {
            blocks.add(new Paragraph(hidden(hidden)));
        }
        return blocks;
    }

    /** The bounds worth showing. */
    public static List<BoundResult> shown(List<BoundResult> limits) {
        return limits.stream()
                .filter(limit -> !limit.kind().isOfThePantry() || isNear(limit))
                .toList();
    }

    /** Words for those that are not. */
    public static String hidden(int number) {
        return "Also kept, with less than half of each used: " + number + (number == 1 ? " ceiling" : " ceilings")
                + " on use or availability from the ingredient set and the price lists.";
    }

    private static boolean isNear(BoundResult limit) {
        var value = limit.value();
        var max = limit.max();
        return value != null && max != null && value.multiply(2).compareTo(max) >= 0 && value.signum() > 0;
    }

    private static List<String> row(BoundResult limit) {
        var value = limit.value();
        return List.of(
                limit.title(),
                value == null ? "none" : Figures.significant(value, 4),
                limit.min() == null ? "" : Figures.significant(limit.min(), 5),
                limit.max() == null ? "" : Figures.significant(limit.max(), 5),
                margin(limit),
                limit.unit(),
                limit.binding() == null || value == null ? "" : "binds");
    }

    /** How far the value is from the nearer limit; of a sure bound, how far what it is sure to hold is. */
    private static String margin(BoundResult limit) {
        var value = limit.value();
        if (value == null) {
            return "";
        }
        var sure = limit.sure();
        if (sure != null) {
            return Figures.significant(nearer(left(sure.least(), limit.min()), left(limit.max(), sure.most())), 3);
        }
        var below = limit.min() == null ? null : value.subtract(limit.min());
        var above = limit.max() == null ? null : limit.max().subtract(value);
        return Figures.significant(nearer(below, above), 3);
    }

    /** What is left between two numbers, as far as six digits tell: a proof by cuts leaves a hair. */
    private static @Nullable BigFraction left(@Nullable BigFraction more, @Nullable BigFraction less) {
        return more == null || less == null
                ? null
                : Decimal.of(Decimal.significant(more, 6)).subtract(Decimal.of(Decimal.significant(less, 6)));
    }

    private static BigFraction nearer(@Nullable BigFraction below, @Nullable BigFraction above) {
        if (below == null) {
            return above == null ? BigFraction.ZERO : above;
        }
        return above != null && above.compareTo(below) < 0 ? above : below;
    }
}
