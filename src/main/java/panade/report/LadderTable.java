package panade.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.study.Ladder;

/** Words what each name less on the label costs. */
public final class LadderTable {
    private LadderTable() {}

    /** The report with the ladder before its cautions. */
    public static ReportDocument under(ReportDocument report, Ladder ladder) {
        var blocks = new ArrayList<>(report.blocks());
        blocks.addAll(Math.max(0, blocks.size() - 2), of(ladder));
        return new ReportDocument(report.title(), blocks);
    }

    private static List<Block> of(Ladder ladder) {
        var columns = List.of(
                new Column("Names on the label, at most", false),
                new Column("cost /lb", true),
                new Column("dearer by", true));
        var least = ladder.rungs().get(0).costPerKg().orElseThrow();
        var rows = ladder.rungs().stream().map(rung -> row(rung, least)).toList();
        return List.of(
                new Heading("What fewer names on the label cost"),
                new Paragraph("Each blend is exact; that no cheaper one has as few names is the search's own word."),
                new Table(columns, rows));
    }

    private static List<String> row(Ladder.Rung rung, BigFraction least) {
        return rung.costPerKg()
                .map(cost -> List.of(
                        String.valueOf(rung.names()),
                        Figures.money(Figures.perPound(cost)),
                        Figures.money(Figures.perPound(cost.subtract(least)))))
                .orElse(List.of(String.valueOf(rung.names()), "none", ""));
    }
}
