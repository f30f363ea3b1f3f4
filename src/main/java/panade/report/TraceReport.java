package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.quantity.Unit;
import panade.report.Block.Column;
import panade.report.Block.Drawing;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.study.Curve;
import panade.study.Curve.Moved;
import panade.study.Curve.Point;

/** Words and draws how the least cost follows one number. */
public final class TraceReport {
    /** Shares that move by less than this, in per cent of the batch, are left out of the words. */
    private static final BigFraction SEEN = BigFraction.of(1, 10);

    private static final int MOVES_TOLD = 3;

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
        return new TraceReport(curve).changes();
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
                        ? " Between points the cost bends a little; they are joined by straight lines here."
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
        blocks.add(new Points(changes()));
        if (!curve.brief().notes().isEmpty()) {
            blocks.add(new Points(curve.brief().notes()));
        }
        return Remarks.under(
                new ReportDocument(curve.brief().title() + ": " + what(), blocks),
                curve.brief().remarks());
    }

    private boolean isBent() {
        return curve.of() instanceof Moved.BoundNumber number && number.bent();
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
        int turns = Math.max(0, curve.points().size() - (curve.endless() ? 1 : 2));
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
        return words + " Beyond these ends no blend is left, or nothing changes any more.";
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
            var slope = i < curve.segments().size()
                    ? Figures.significant(slope(curve.segments().get(i).slope()), 3)
                    : "";
            rows.add(List.of(
                    Figures.significant(told(point.at()), 6),
                    Figures.money(Figures.perPound(point.costPerKg())),
                    slope));
        }
        return rows;
    }

    /** Cost per lb for one unit of what is told: for prices both are per weight, so the weights cancel. */
    private BigFraction slope(BigFraction perKg) {
        return curve.of() instanceof Moved.Price ? perKg : perKg.multiply(Unit.POUND.factor());
    }

    private List<String> changes() {
        var lines = new ArrayList<String>();
        for (int i = 1; i < curve.segments().size(); i++) {
            var at = curve.segments().get(i).from();
            lines.add("at " + Figures.significant(told(at), 5) + ": " + difference(i));
        }
        return lines.isEmpty() ? List.of("The blend never changes.") : lines;
    }

    /** What is different after a point: along prices the blends on both sides, along numbers those at the ends. */
    private String difference(int i) {
        var before = curve.segments().get(i - 1).blend();
        var after = curve.segments().get(i).blend();
        var ids = new TreeSet<String>();
        before.lines().forEach(line -> ids.add(line.use().ingredient()));
        after.lines().forEach(line -> ids.add(line.use().ingredient()));
        var crossing = new ArrayList<String>();
        var moving = new ArrayList<String>();
        ids.forEach(id -> takeover(id, before, after).ifPresent(crossing::add));
        ids.stream()
                .sorted((a, b) -> change(b, before, after)
                        .abs()
                        .subtract(change(a, before, after).abs())
                        .signum())
                .forEach(id -> word(id, before, after, crossing, moving));
        crossing.addAll(moving.subList(0, Math.min(MOVES_TOLD, moving.size())));
        return crossing.isEmpty() ? "amounts below a thousandth move" : String.join("; ", crossing);
    }

    /** Whose goods take over from whose; empty where the suppliers stay, or the ingredient comes in or leaves. */
    private Optional<String> takeover(String id, Blend before, Blend after) {
        var old = suppliers(id, before);
        var fresh = suppliers(id, after);
        return old.isEmpty() || fresh.isEmpty() || old.equals(fresh)
                ? Optional.empty()
                : Optional.of(
                        name(id) + " from " + String.join(" and ", fresh) + " instead of " + String.join(" and ", old));
    }

    private static Set<String> suppliers(String id, Blend blend) {
        return blend.lines().stream()
                .filter(line -> line.use().ingredient().equals(id))
                .map(line -> line.offer().supplier())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static BigFraction change(String id, Blend before, Blend after) {
        return after.shareOf(id).subtract(before.shareOf(id)).multiply(100);
    }

    /** What comes in or leaves is told first, then the largest of the other moves. */
    private void word(String id, Blend before, Blend after, List<String> crossing, List<String> moving) {
        var change = change(id, before, after);
        var size = Figures.percent(change.abs().divide(100)) + " %";
        if (before.shareOf(id).signum() == 0) {
            crossing.add(name(id) + " comes in, +" + size);
        } else if (after.shareOf(id).signum() == 0) {
            crossing.add(name(id) + " leaves, -" + size);
        } else if (change.abs().subtract(SEEN).signum() >= 0) {
            moving.add(name(id) + (change.signum() > 0 ? " +" : " -") + size);
        }
    }
}
