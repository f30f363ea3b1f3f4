package panade.report.blend;

import java.util.List;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.BlendResult.Rung;

/** Words what each name less on the label costs. */
final class LadderTable {
    private LadderTable() {}

    static List<Block> of(List<Rung> ladder) {
        var columns = List.of(
                new Column("Names on the label, at most", false),
                new Column("cheapest /lb", true),
                new Column("dearer by", true));
        var rows = ladder.stream().map(LadderTable::row).toList();
        return List.of(
                new Heading("What fewer names on the label cost"),
                new Paragraph("Each blend is exact; that no cheaper one has as few names is the search's own word."),
                new Table(columns, rows));
    }

    private static List<String> row(Rung rung) {
        var names = String.valueOf(rung.names());
        var cost = rung.costPerKg();
        var dearer = rung.dearerPerKg();
        return cost == null || dearer == null
                ? List.of(names, rung.undecided() == null ? "none" : "not known", "")
                : List.of(names, Figures.money(Figures.perPound(cost)), Figures.money(Figures.perPound(dearer)));
    }
}
