package panade.report.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.ReportDocument;
import panade.report.question.QuotesReport;
import panade.result.formula.MadeQuotesResult;
import panade.result.formula.MadeQuotesResult.Kept;

/** Words what keeping a formula costs under several price lists, and then how their best blends differ. */
public final class MadeQuotesReport {
    private MadeQuotesReport() {}

    /** The report. */
    public static ReportDocument of(MadeQuotesResult result) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("Keeping what is made, cost per lb"));
        blocks.add(new Table(
                List.of(
                        new Column("List", false),
                        new Column("As made", true),
                        new Column("Best blend", true),
                        new Column("Keeping costs", true),
                        new Column("", false)),
                Stream.concat(result.made().stream(), Stream.of(result.madePooled()))
                        .map(MadeQuotesReport::row)
                        .toList()));
        blocks.add(new Paragraph(told(result)));
        blocks.add(new Heading("The best blends"));
        blocks.addAll(QuotesReport.of(result.quotes()).blocks());
        return new ReportDocument(result.title() + ": " + result.made().size() + " price lists", blocks);
    }

    private static List<String> row(Kept kept) {
        return List.of(
                kept.list().isEmpty() ? "all together" : kept.list(),
                money(kept.perKg()),
                money(kept.best()),
                money(kept.abovePerKg()),
                kept.unsold().isEmpty() ? "" : "no " + String.join(", ", kept.unsold()));
    }

    private static String money(@Nullable BigFraction perKg) {
        return perKg == null ? "-" : Figures.money(Figures.perPound(perKg));
    }

    private static String told(MadeQuotesResult result) {
        return "Where the formula names no supplier, or one who is not on a list, the cheapest offer of the list counts."
                + (result.broken().isEmpty()
                        ? ""
                        : " The best blends keep every bound; what is made breaks: "
                                + String.join(", ", result.broken()) + ".");
    }
}
