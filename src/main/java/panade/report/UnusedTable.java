package panade.report;

import java.util.List;
import panade.domain.Brief;
import panade.explain.Explanation.Unused;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Table;

/** Tabulates what is not used, and the price that would change that. */
final class UnusedTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Ingredient", false),
            new Column("Cheapest offer", false),
            new Column("Now /lb", true),
            new Column("Comes in below /lb", true));

    private UnusedTable() {}

    static List<Block> of(Brief brief, List<Unused> unused) {
        return unused.isEmpty()
                ? List.of()
                : List.of(
                        new Heading("Not used, and the price as bought at which each would come in"),
                        new Table(
                                COLUMNS,
                                unused.stream().map(each -> row(brief, each)).toList()));
    }

    private static List<String> row(Brief brief, Unused unused) {
        var entersAt = unused.entersAt();
        return List.of(
                brief.set().ingredient(unused.ingredient()).name(),
                unused.supplier(),
                Figures.money(Figures.perPound(unused.pricePerKg())),
                entersAt == null ? "at no price" : Figures.money(Figures.perPound(entersAt)));
    }
}
