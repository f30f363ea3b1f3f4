package panade.report.plate;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.PanelResult.Compliance;

/** Words how much room declared figures have within what the law tolerates. */
final class ComplianceTable {
    /** Fewer standard deviations than this are told as tight: one batch in some forty would lie beyond, if normal. */
    private static final BigDecimal TIGHT = new BigDecimal("2");

    private ComplianceTable() {}

    static List<Block> of(List<Compliance> lines) {
        var known = lines.stream().filter(line -> line.spread() != null).toList();
        var blocks = new ArrayList<Block>();
        if (lines.isEmpty()) {
            return blocks;
        }
        blocks.add(new Heading("Room within what the law tolerates"));
        if (!known.isEmpty()) {
            blocks.add(table(known));
        }
        var points = new ArrayList<String>();
        lines.stream()
                .filter(line -> line.spread() == null)
                .forEach(line ->
                        points.add(line.name() + ": not known; no spread of " + PanelReport.some(line.unknownFor())));
        points.add(
                "Spread is one standard deviation of the blend, each ingredient varying on its own; room counts how many"
                        + " of them fit before the limit. A laboratory's own error comes on top.");
        lines.stream().map(Compliance::source).distinct().forEach(source -> points.add("Tolerance: " + source + "."));
        blocks.add(new Points(points));
        return blocks;
    }

    private static Table table(List<Compliance> lines) {
        return new Table(
                List.of(
                        new Column("", false),
                        new Column("declared", true),
                        new Column("at least", true),
                        new Column("at most", true),
                        new Column("expected", true),
                        new Column("spread", true),
                        new Column("room", true),
                        new Column("", false)),
                lines.stream().map(ComplianceTable::row).toList());
    }

    private static List<String> row(Compliance line) {
        var spread = line.spread();
        var room = line.room();
        return List.of(
                line.name(),
                line.declared(),
                figure(line.low()),
                figure(line.high()),
                figure(line.expected()),
                spread == null ? "" : Figures.decimal(spread, 3),
                room == null ? "" : room.setScale(1, RoundingMode.FLOOR).toPlainString(),
                words(line, room));
    }

    private static String figure(@Nullable BigFraction value) {
        return value == null ? "" : Figures.significant(value, 4);
    }

    private static String words(Compliance line, @Nullable BigDecimal room) {
        if (line.outside()) {
            return "outside";
        }
        return room != null && room.compareTo(TIGHT) < 0 ? "tight" : "";
    }
}
