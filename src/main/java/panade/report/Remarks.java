package panade.report;

import java.util.ArrayList;
import java.util.List;
import panade.domain.origin.Remark;
import panade.report.Block.Heading;
import panade.report.Block.Points;
import panade.result.RemarkLine;

/** Words what documents say that may not be meant: the last thing told, so that it is not scrolled away. */
public final class Remarks {
    private static final String HEADING = "Remarks";

    private Remarks() {}

    /** A report with a section of remarks at its end; unchanged when there are none. */
    public static ReportDocument under(ReportDocument report, List<Remark> remarks) {
        var blocks = new ArrayList<>(report.blocks());
        if (!remarks.isEmpty()) {
            blocks.add(new Heading(HEADING));
            blocks.add(points(remarks));
        }
        return new ReportDocument(report.title(), blocks);
    }

    /** The same, of a result. */
    public static ReportDocument on(ReportDocument report, List<RemarkLine> remarks) {
        var blocks = new ArrayList<>(report.blocks());
        if (!remarks.isEmpty()) {
            blocks.add(new Heading(HEADING));
            blocks.add(lines(remarks));
        }
        return new ReportDocument(report.title(), blocks);
    }

    /** One point a remark of a result, its place first. */
    public static Points lines(List<RemarkLine> remarks) {
        return new Points(remarks.stream()
                .map(remark -> remark.place() + ": " + remark.text())
                .toList());
    }

    /** One point a remark, its place first. */
    public static Points points(List<Remark> remarks) {
        return new Points(remarks.stream().map(Remark::line).toList());
    }
}
