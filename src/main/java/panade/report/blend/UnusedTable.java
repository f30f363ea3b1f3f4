package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.BlendResult.NearestUnused;
import panade.result.BlendResult.UnusedIngredient;

/** Tabulates what is not used, and the price that would change that. */
public final class UnusedTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Ingredient", false),
            new Column("Now /lb", true),
            new Column("Comes in below", true),
            new Column("Then %", true),
            new Column("Saves /lb", true),
            new Column("", false));

    private UnusedTable() {}

    /** The table; nothing when everything is used. */
    public static List<Block> of(List<UnusedIngredient> unused) {
        return unused.isEmpty()
                ? List.of()
                : List.of(
                        new Heading("Not used, and the price at which each would come in"),
                        new Table(COLUMNS, unused.stream().map(UnusedTable::row).toList()),
                        new Paragraph(
                                "Prices as bought. \"Then\" is its share of the blend once it comes in; \"saves\" is"
                                        + " what a price 5 % below that would save; \"not worth it\" is under a cent a pound and"
                                        + " under half a per cent."));
    }

    /** The same for those that are nearest to coming in, with a word on how many more there are. */
    public static List<Block> of(NearestUnused nearest) {
        var blocks = new ArrayList<>(of(nearest.first()));
        if (nearest.others() > 0) {
            blocks.add(new Paragraph("These are the nearest to coming in. Of " + nearest.others()
                    + " more, each would have to lose a larger part of its price; --all lists them."));
        }
        return blocks;
    }

    private static List<String> row(UnusedIngredient unused) {
        var price = Figures.money(Figures.perPound(unused.pricePerKg()));
        var at = unused.entersAt();
        var share = unused.share();
        var saving = unused.savingPerKg();
        if (at == null || share == null || saving == null) {
            return List.of(unused.name(), price, "at no price", "", "", "");
        }
        return List.of(
                unused.name(),
                price,
                Figures.money(Figures.perPound(at)),
                Figures.percent(share),
                Figures.money(Figures.perPound(saving)),
                unused.worthwhile() ? "" : "not worth it");
    }
}
