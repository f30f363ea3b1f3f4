package panade.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Unit;
import panade.report.Block.Column;
import panade.report.Block.Drawing;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.trace.Curve;
import panade.trace.Curve.End;
import panade.trace.Curve.Moved;
import panade.trace.Curve.Point;
import panade.trace.Curve.Segment;

/** Words and draws how the least cost follows one number. */
public final class TraceReport {
    private final Curve curve;

    private TraceReport(Curve curve) {
        this.curve = curve;
    }

    /** The report on a curve. */
    public static ReportDocument of(Curve curve) {
        return new TraceReport(curve).document();
    }

    /** What the curve is over. */
    public static String subject(Curve curve) {
        return new TraceReport(curve).what();
    }

    /** What changes at each breakpoint, one line each. */
    public static List<String> changes(Curve curve) {
        return CurveChanges.of(curve);
    }

    /** How often the rate changes between the ends of a curve, jumps counted. */
    public static int turns(Curve curve) {
        return CurveChanges.turns(curve);
    }

    /** The number that moves, as it is told: prices per pound, bounds in their own unit. */
    public static BigFraction told(Curve curve, BigFraction at) {
        return new TraceReport(curve).told(at);
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
        if (!curve.brief().notes().isEmpty()) {
            blocks.add(new Points(curve.brief().notes()));
        }
        return Remarks.under(
                new ReportDocument(curve.brief().title() + ": " + what(), blocks),
                curve.brief().remarks());
    }

    private boolean isBent() {
        return curve.segments().stream().anyMatch(Segment::isBent);
    }

    private String what() {
        return curve.of() instanceof Moved.Price price
                ? "the price of " + name(price.ingredient())
                : ((Moved.BoundNumber) curve.of()).name();
    }

    private String axis() {
        return curve.of() instanceof Moved.Price ? "Price /lb" : unit().isEmpty() ? "Number" : "Number, " + unit();
    }

    private String unit() {
        return curve.of() instanceof Moved.BoundNumber number ? number.unit() : "";
    }

    private String name(String id) {
        return curve.brief().set().ingredient(id).name();
    }

    /** Prices are told per pound, numbers in their own unit. */
    private BigFraction told(BigFraction at) {
        return curve.of() instanceof Moved.Price ? Figures.perPound(at) : at;
    }

    private String verdict() {
        int turns = CurveChanges.turns(curve);
        var ends = curve.points();
        var words = turns == 1 ? "The blend changes once" : "The blend changes " + turns + " times";
        words += " from " + Figures.significant(told(ends.get(0).at()), 5);
        words += curve.endless()
                ? " upward"
                : " to " + Figures.significant(told(ends.get(ends.size() - 1).at()), 5);
        words += (unit().isEmpty() ? "" : " " + unit()) + "; now it is " + Figures.significant(told(curve.now()), 5)
                + ".";
        if (curve.of() instanceof Moved.Price price) {
            return words + " As bought, per lb, from " + price.supplier() + "; " + others(price.ingredient())
                    + " its price.";
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

    private String others(String ingredient) {
        int offers = curve.brief().offersFor(ingredient).size();
        return offers == 1 ? "everything else keeps" : "everything else, other offers of it too, keeps";
    }

    private Chart chart() {
        var across = curve.points().stream().map(Point::at).map(this::told).toList();
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
            rows.add(List.of(place(i), Figures.money(Figures.perPound(point.costPerKg())), slope));
        }
        return rows;
    }

    private String place(int i) {
        var point = curve.points().get(i);
        var at = Figures.significant(told(point.at()), 6, curve.rounding(i));
        return switch (point.kind()) {
            case JUST_ABOVE -> "just above " + at;
            case JUST_BELOW -> "just below " + at;
            case TURN, BETWEEN -> at;
        };
    }

    /** Cost per lb for one unit of what is told: for prices both are per weight, so the weights cancel. */
    private BigFraction slope(BigFraction perKg) {
        return curve.of() instanceof Moved.Price ? perKg : perKg.multiply(Unit.POUND.factor());
    }
}
