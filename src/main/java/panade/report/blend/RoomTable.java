package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.BlendResult;
import panade.result.BlendResult.Alternative;
import panade.result.BlendResult.PriceRange;
import panade.result.BlendResult.ShareChange;

/** Tabulates how far each ingredient and its price may move, and words the blends nearby. */
public final class RoomTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Ingredient", false),
            new Column("Share %", true),
            new Column("least", true),
            new Column("most", true),
            new Column("Price /lb", true),
            new Column("blend stays from", true),
            new Column("to", true));

    private RoomTable() {}

    /** The table and the blends nearby. */
    public static List<Block> of(BlendResult result) {
        var slack = Figures.significant(result.slack().multiply(100), 3);
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("Room to move for " + slack + " % more money, and prices that change nothing"));
        blocks.add(new Table(
                COLUMNS, result.prices().get().stream().map(RoomTable::row).toList()));
        if (!result.alternatives().isEmpty()) {
            blocks.add(
                    new Paragraph("Clearly different blends that keep every bound for at most " + slack + " % more:"));
            blocks.add(new Points(
                    result.alternatives().stream().map(RoomTable::words).toList()));
        }
        return blocks;
    }

    private static List<String> row(PriceRange range) {
        return List.of(
                range.name(),
                Figures.percent(range.share()),
                percent(range.least()),
                percent(range.most()),
                price(range.pricePerKg(), ""),
                price(range.from(), "nothing"),
                price(range.to(), "any"));
    }

    private static String percent(@Nullable BigFraction share) {
        return share == null ? "" : Figures.percent(share);
    }

    private static String price(@Nullable BigFraction perKg, String otherwise) {
        return perKg == null ? otherwise : Figures.money(Figures.perPound(perKg));
    }

    private static String words(Alternative alternative) {
        var changes = alternative.changes().stream().map(RoomTable::words).toList();
        return Figures.money(Figures.perPound(alternative.perKg())) + "/lb, in per cent of the batch: "
                + String.join("; ", changes) + ".";
    }

    private static String words(ShareChange each) {
        var sign = each.change().signum() > 0 ? " +" : " -";
        return each.name() + sign + Figures.percent(each.change().abs());
    }
}
