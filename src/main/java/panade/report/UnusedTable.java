package panade.report;

import java.util.List;
import panade.domain.Brief;
import panade.explain.Explanation.Unused;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;

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
    public static List<Block> of(Brief brief, List<Unused> unused) {
        return unused.isEmpty()
                ? List.of()
                : List.of(
                        new Heading("Not used, and the price at which each would come in"),
                        new Table(
                                COLUMNS,
                                unused.stream().map(each -> row(brief, each)).toList()),
                        new Paragraph(
                                "Prices as bought. \"Then\" is its share of the blend once it comes in; \"saves\" is"
                                        + " what a price 5 % below that would save; \"not worth it\" is under a cent a pound and"
                                        + " under half a per cent."));
    }

    private static List<String> row(Brief brief, Unused unused) {
        var entry = unused.entry();
        var name = brief.set().ingredient(unused.ingredient()).name();
        var price = Figures.money(Figures.perPound(unused.pricePerKg()));
        if (entry == null) {
            return List.of(name, price, "at no price", "", "", "");
        }
        return List.of(
                name,
                price,
                Figures.money(Figures.perPound(entry.at())),
                Figures.percent(entry.share()),
                Figures.money(Figures.perPound(entry.saving())),
                entry.worthwhile() ? "" : "not worth it");
    }
}
