package panade.report.trial;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.trial.SureCurveResult;
import panade.result.trial.SureCurveResult.Point;

/** Words what it costs to be more or less sure of a bound. */
public final class SureCurveReport {
    private final SureCurveResult result;

    private SureCurveReport(SureCurveResult result) {
        this.result = result;
    }

    /** The report. */
    public static ReportDocument of(SureCurveResult result) {
        var document = new ReportDocument(result.title(), new SureCurveReport(result).blocks());
        return Remarks.on(document, result.remarks());
    }

    private List<Block> blocks() {
        var of = result.of();
        var unit = of.unit().isEmpty() ? "" : ", " + of.unit();
        var currency = result.currency().isEmpty() ? "" : result.currency() + " ";
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph("What it costs to be sure of \"" + of.name() + "\", " + of.asks() + ":"));
        blocks.add(new Table(
                List.of(
                        new Column("Sure", true),
                        new Column("cheapest, " + currency + "/lb", true),
                        new Column("dearer by", true),
                        new Column("on average" + unit, true),
                        new Column("", false)),
                result.points().stream().map(SureCurveReport::row).toList()));
        blocks.add(new Paragraph((of.both()
                        ? "Batches that miss it on either side count together."
                        : "At 50 % the average alone keeps the bound, and every other batch misses it.")
                + " Each cost was proved on its own, to a millionth."));
        return blocks;
    }

    private static List<String> row(Point point) {
        var undecided = point.undecided();
        var note = undecided != null
                ? "not decided: " + undecided
                : point.costPerKg() == null ? "no blend" : point.asked() ? "as asked" : "";
        return List.of(
                Figures.significant(point.sure().multiply(100), 4) + " %",
                money(point.costPerKg()),
                money(point.dearerPerKg()),
                point.value() == null ? "" : Figures.significant(point.value(), 4),
                note);
    }

    private static String money(@Nullable BigFraction perKg) {
        return perKg == null ? "" : Figures.money(Figures.perPound(perKg));
    }
}
