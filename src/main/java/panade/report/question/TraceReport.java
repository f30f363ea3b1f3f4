package panade.report.question;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Unit;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Drawing;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Chart;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.TraceResult;
import panade.result.TraceResult.BoundNumber;
import panade.result.TraceResult.End;
import panade.result.TraceResult.Kind;
import panade.result.TraceResult.Point;
import panade.result.TraceResult.Price;
import panade.result.TraceResult.Segment;

/** Words and draws how the least cost follows one number. */
public final class TraceReport {
    private final TraceResult curve;

    private TraceReport(TraceResult curve) {
        this.curve = curve;
    }

    /** The report on a curve. */
    public static ReportDocument of(TraceResult curve) {
        return new TraceReport(curve).document();
    }

    /** What the curve is over. */
    public static String subject(TraceResult curve) {
        return new TraceReport(curve).what();
    }

    /** What changes at each breakpoint, one line each. */
    public static List<String> changes(TraceResult curve) {
        return CurveChanges.of(curve);
    }

    /** How often the rate changes between the ends of a curve, jumps counted. */
    public static int turns(TraceResult curve) {
        return CurveChanges.turns(curve);
    }

    /** The number that moves, as it is told: prices per pound, bounds in their own unit. */
    public static BigFraction told(TraceResult curve, BigFraction at) {
        return new TraceReport(curve).told(at);
    }

    /** What stands before a point's number: which side of a jump it is on; empty where there is none. */
    public static String beside(Point point) {
        return point.kind() == Kind.JUST_ABOVE ? "just above " : point.kind() == Kind.JUST_BELOW ? "just below " : "";
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph("Exact from end to end: every breakpoint was solved again and proved."
                + (isBent()
                        ? " Between points the cost bends a little; straight lines through them are off by less than a"
                                + " thousandth of it."
                        : "")));
        if (curve.points().size() > 1) {
            blocks.add(new Heading("Least cost per lb over " + what()));
            blocks.add(new Drawing(chart().lines()));
        }
        blocks.add(new Heading("Where it changes"));
        blocks.add(new Table(
                List.of(
                        new Column(axis(), true),
                        new Column("Cost /lb", true),
                        new Column("Cost per unit, then", true)),
                rows()));
        blocks.add(new Points(CurveChanges.of(curve)));
        if (!curve.notes().isEmpty()) {
            blocks.add(new Points(curve.notes()));
        }
        return Remarks.on(new ReportDocument(curve.title() + ": " + what(), blocks), curve.remarks());
    }

    private boolean isBent() {
        return curve.segments().stream().anyMatch(Segment::isBent);
    }

    private String what() {
        return curve.of() instanceof Price price ? "the price of " + price.name() : ((BoundNumber) curve.of()).bound();
    }

    private String axis() {
        return curve.of() instanceof Price ? "Price /lb" : unit().isEmpty() ? "Number" : "Number, " + unit();
    }

    private String unit() {
        return curve.of() instanceof BoundNumber number ? number.unit() : "";
    }

    /** Prices are told per pound, numbers in their own unit. */
    private BigFraction told(BigFraction at) {
        return curve.of() instanceof Price ? Figures.perPound(at) : at;
    }

    private String verdict() {
        int turns = CurveChanges.turns(curve);
        var ends = curve.points();
        var words = turns == 1 ? "The blend changes once" : "The blend changes " + turns + " times";
        words += " from " + Figures.significant(told(ends.get(0).place()), 5);
        words += curve.endless()
                ? " upward"
                : " to " + Figures.significant(told(ends.get(ends.size() - 1).place()), 5);
        words += (unit().isEmpty() ? "" : " " + unit()) + "; now it is " + Figures.significant(told(curve.now()), 5)
                + ".";
        if (curve.of() instanceof Price price) {
            return words + " As bought, per lb, from " + price.supplier() + "; " + others(price) + " its price.";
        }
        return words + end("Below", curve.low()) + end("Above", curve.high());
    }

    private static String end(String where, End end) {
        return switch (end) {
            case ASKED -> "";
            case NO_BLEND -> " " + where + " that no blend is left.";
            case NOTHING_CHANGES -> " " + where + " that nothing changes any more.";
            case NOT_FOLLOWED -> " " + where + " that it goes on, but was not followed.";
        };
    }

    private static String others(Price price) {
        return price.onlyOffer() ? "everything else keeps" : "everything else, other offers of it too, keeps";
    }

    private Chart chart() {
        var across = curve.points().stream().map(Point::place).map(this::told).toList();
        var up = curve.points().stream()
                .map(Point::costPerKg)
                .map(Figures::perPound)
                .toList();
        return new Chart(across, up);
    }

    private List<List<String>> rows() {
        var rows = new ArrayList<List<String>>();
        for (int i = 0; i < curve.points().size(); i++) {
            var point = curve.points().get(i);
            var slope = curve.after(i)
                    .map(segment -> Figures.significant(slope(segment.slope()), 3))
                    .orElse("");
            rows.add(List.of(place(point), Figures.money(Figures.perPound(point.costPerKg())), slope));
        }
        return rows;
    }

    private String place(Point point) {
        return beside(point) + Figures.significant(told(point.place()), 6, point.rounding());
    }

    /** Cost per lb for one unit of what is told: for prices both are per weight, so the weights cancel. */
    private BigFraction slope(BigFraction perKg) {
        return curve.of() instanceof Price ? perKg : perKg.multiply(Unit.POUND.factor());
    }
}
