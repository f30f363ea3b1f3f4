package panade.report;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.cost.Ladder;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;

/** Words what each name less on the label costs. */
final class LadderTable {
    private LadderTable() {}

    static List<Block> of(Ladder ladder) {
        var columns = List.of(
                new Column("Names on the label, at most", false),
                new Column("cheapest /lb", true),
                new Column("dearer by", true));
        var least = ladder.rungs().get(0).costPerKg().orElseThrow();
        var rows = ladder.rungs().stream().map(rung -> row(rung, least)).toList();
        return List.of(
                new Heading("What fewer names on the label cost"),
                new Paragraph("Each blend is exact; that no cheaper one has as few names is the search's own word."),
                new Table(columns, rows));
    }

    private static List<String> row(Ladder.Rung rung, BigFraction least) {
        var names = String.valueOf(rung.names());
        return rung.costPerKg()
                .fold(
                        cost -> List.of(
                                names,
                                Figures.money(Figures.perPound(cost)),
                                Figures.money(Figures.perPound(cost.subtract(least)))),
                        () -> List.of(names, "none", ""),
                        reason -> List.of(names, "not known", ""));
    }
}
