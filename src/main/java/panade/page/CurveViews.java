package panade.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.page.Content.Cell;
import panade.page.Content.CurvePoint;
import panade.page.Content.CurveView;
import panade.page.Content.Curves;
import panade.quantity.Decimal;
import panade.quantity.Fractions;
import panade.report.Figures;
import panade.report.question.TraceReport;
import panade.result.ShareLine;
import panade.result.TraceResult;
import panade.result.TraceResult.BoundNumber;
import panade.result.TraceResult.Point;
import panade.result.TraceResult.Price;
import panade.result.TraceResult.Segment;

/** Curves with the blend at each of their points. */
final class CurveViews {
    private static final int DIGITS = 12;

    private final TraceResult curve;
    private final List<List<ShareLine>> blends;

    private CurveViews(TraceResult curve) {
        this.curve = curve;
        this.blends =
                IntStream.range(0, curve.points().size()).mapToObj(this::blend).toList();
    }

    static Curves of(List<TraceResult> curves) {
        return new Curves(IntStream.range(0, curves.size())
                .mapToObj(i -> new CurveViews(curves.get(i)).view("curve-" + (i + 1)))
                .toList());
    }

    /** Along a price the blend of the stretch that begins at the point; along a bound the one at the point. */
    private List<ShareLine> blend(int point) {
        var own = curve.points().get(point).blend();
        return isPrice() ? curve.after(point).map(Segment::blend).orElse(own) : own;
    }

    private boolean isPrice() {
        return curve.of() instanceof Price;
    }

    private CurveView view(String id) {
        var ids = ids();
        var moving = ids.stream().filter(this::moves).toList();
        return new CurveView(
                id,
                title(),
                sentence(),
                axis(),
                unit(),
                "cost, " + perPound(),
                perPound(),
                isPrice(),
                exact(told(curve.now())),
                moving.stream().map(this::name).toList(),
                points(moving),
                TraceReport.changes(curve),
                still(moving.size(), ids.size() - moving.size()));
    }

    private String perPound() {
        var currency = curve.currency();
        return currency.isEmpty() ? "per lb" : currency + "/lb";
    }

    /** Every ingredient that is used anywhere along the curve, by its greatest share. */
    private List<String> ids() {
        return blends.stream()
                .flatMap(List::stream)
                .map(ShareLine::ingredient)
                .distinct()
                .sorted((a, b) -> greatest(b).compareTo(greatest(a)))
                .toList();
    }

    private BigFraction greatest(String id) {
        return blends.stream().map(blend -> ShareLine.shareOf(id, blend)).reduce(BigFraction.ZERO, Fractions::max);
    }

    private boolean moves(String id) {
        return blends.stream()
                .anyMatch(blend -> !ShareLine.shareOf(id, blend).equals(ShareLine.shareOf(id, blends.get(0))));
    }

    private String title() {
        var subject = TraceReport.subject(curve);
        return subject.substring(0, 1).toUpperCase(Locale.ROOT) + subject.substring(1);
    }

    private String sentence() {
        var points = curve.points();
        int turns = TraceReport.turns(curve);
        var times = turns == 0 ? "not at all" : turns == 1 ? "once" : turns + " times";
        var stretch = number(curve.now()) + " " + unit() + " now. Between "
                + number(points.get(0).place()) + " and "
                + number(points.get(points.size() - 1).place()) + " ";
        if (isPrice()) {
            return stretch + "the blend changes " + times + "; from one change to the next only its cost moves.";
        }
        return stretch + "what one more is worth changes " + times + "; from one point to the next the blend shifts "
                + (isBent() ? "nearly evenly, and is told as if it did." : "evenly.")
                + (jumps() ? " Where the cost jumps, nothing lies between: the blend changes at once." : "");
    }

    private boolean jumps() {
        return curve.points().stream().anyMatch(Point::isBesideJump);
    }

    private boolean isBent() {
        return curve.of() instanceof BoundNumber number && number.bent();
    }

    private String number(BigFraction at) {
        return Figures.significant(told(at), 4);
    }

    private String axis() {
        if (isPrice()) {
            return "Price as bought, " + perPound();
        }
        return unit().isEmpty() ? title() : title() + ", " + unit();
    }

    private String unit() {
        return curve.of() instanceof BoundNumber number ? number.unit() : perPound();
    }

    private BigFraction told(BigFraction at) {
        return TraceReport.told(curve, at);
    }

    private String name(String id) {
        return curve.names().getOrDefault(id, id);
    }

    private List<CurvePoint> points(List<String> moving) {
        var points = new ArrayList<CurvePoint>();
        for (int i = 0; i < blends.size(); i++) {
            var blend = blends.get(i);
            var point = curve.points().get(i);
            var at = told(point.place());
            var cost = Figures.perPound(point.costPerKg());
            var beside = TraceReport.beside(point);
            points.add(new CurvePoint(
                    beside.isEmpty() ? "at" : beside.strip().replace(' ', '-'),
                    new Cell(
                            beside + Figures.significant(at, 5, point.rounding()),
                            Decimal.significant(at, DIGITS, point.rounding()).toPlainString()),
                    new Cell(Figures.money(cost), exact(cost)),
                    moving.stream()
                            .map(id -> share(ShareLine.shareOf(id, blend)))
                            .toList()));
        }
        return points;
    }

    private static Cell share(BigFraction share) {
        return new Cell(Figures.percent(share), exact(share.multiply(100)));
    }

    private static String exact(BigFraction number) {
        return Decimal.significant(number, DIGITS).toPlainString();
    }

    private static String still(int moving, int others) {
        if (moving == 0) {
            return "No ingredient moves here.";
        }
        return others == 0
                ? ""
                : others == 1
                        ? "The other ingredient does not move here."
                        : "The other " + others + " ingredients do not move here.";
    }
}
