package panade.report.question;

import static panade.result.ShareLine.shareOf;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Figures;
import panade.result.ShareLine;
import panade.result.TraceResult;
import panade.result.TraceResult.Kind;
import panade.result.TraceResult.Point;
import panade.result.TraceResult.Price;
import panade.result.TraceResult.Segment;

/**
 * Says what is different from each breakpoint of a curve on. Along a price the blend changes at once and then stays;
 * along a bound's number it shifts all the way, and what comes in or leaves does so from nothing.
 */
final class CurveChanges {
    /** Shares that move by less than this, in per cent of the batch, are left out of the words. */
    private static final BigFraction MIN_SHOWN_SHARE = BigFraction.of(1, 10);

    private static final int MOVES_TOLD = 3;

    private final TraceResult curve;
    private final Map<String, String> names;

    private CurveChanges(TraceResult curve) {
        this.curve = curve;
        this.names = curve.names();
    }

    /** One line each. */
    static List<String> of(TraceResult curve) {
        var changes = new CurveChanges(curve);
        var lines = changes.breaks()
                .mapToObj(i -> changes.where(i) + changes.what(i))
                .toList();
        return lines.isEmpty() ? List.of("The blend never changes.") : lines;
    }

    static int turns(TraceResult curve) {
        return (int) new CurveChanges(curve).breaks().count();
    }

    /** Segments that begin where something changes; their number itself for a jump at the end of the last one. */
    private IntStream breaks() {
        int last = curve.segments().size();
        return IntStream.rangeClosed(0, last)
                .filter(i -> (i == 0 || i == last) ? beginning(i).size() > 1 : kind(i) != Kind.BETWEEN);
    }

    private @Nullable Kind kind(int segment) {
        return beginning(segment).stream()
                .filter(Point::isBesideJump)
                .findFirst()
                .orElse(beginning(segment).get(0))
                .kind();
    }

    /** The point at which a segment begins, or the two of a jump; where the last one ends if there is none. */
    private List<Point> beginning(int segment) {
        var segments = curve.segments();
        var points = curve.points();
        var from = points.get(segment < segments.size() ? segments.get(segment).point() : points.size() - 1);
        return points.stream()
                .filter(point -> point.place().equals(from.place()))
                .toList();
    }

    private String where(int segment) {
        var ends = beginning(segment);
        var place = ends.get(0).place();
        var at = ends.size() < 2
                ? told(place)
                : Figures.significant(TraceReport.told(curve, place), 5, RoundingMode.CEILING);
        var jump = ends.size() < 2
                ? ""
                : "the cost jumps from " + cost(ends.get(0)) + " to " + cost(ends.get(1)) + "/lb; ";
        var kind = kind(segment);
        return kind == Kind.JUST_ABOVE
                ? "just above " + at + ": " + jump
                : kind == Kind.JUST_BELOW ? "at " + at + ", but not below: " + jump : "at " + at + ": ";
    }

    private static String cost(Point point) {
        return Figures.money(Figures.perPound(point.costPerKg()));
    }

    private String told(BigFraction at) {
        return Figures.significant(TraceReport.told(curve, at), 5);
    }

    private String what(int i) {
        if (i == 0 || i == curve.segments().size()) {
            return changed(beginning(i).get(0).blend(), beginning(i).get(1).blend());
        }
        var before = curve.segments().get(i - 1);
        var after = curve.segments().get(i);
        boolean atOnce = curve.of() instanceof Price || kind(i) != null;
        return atOnce ? changed(before.before(), after.after()) : shifting(before, after, end(after));
    }

    /** The blend where a segment ends. */
    private List<ShareLine> end(Segment segment) {
        return to(segment)
                .flatMap(to -> curve.points().stream()
                        .filter(point -> point.place().equals(to))
                        .filter(point -> point.kind() != Kind.JUST_ABOVE)
                        .findFirst())
                .map(Point::blend)
                .orElse(segment.before());
    }

    /** The number at which a segment ends; empty when it goes on for ever. */
    private Optional<BigFraction> to(Segment segment) {
        return segment.to() == null
                ? Optional.empty()
                : Optional.of(curve.points().get(segment.point() + 1).place());
    }

    /** What is different between two blends. */
    private String changed(List<ShareLine> before, List<ShareLine> after) {
        var crossing = new ArrayList<String>();
        var moving = new ArrayList<String>();
        var ids = ids(before, after);
        ids.forEach(id -> takeover(id, before, after).ifPresent(crossing::add));
        largestFirst(ids, before, after).forEach(id -> {
            if (shareOf(id, before).signum() == 0) {
                crossing.add(name(id) + " comes in, " + size(id, before, after));
            } else if (shareOf(id, after).signum() == 0) {
                crossing.add(name(id) + " leaves, " + size(id, before, after));
            } else if (isSeen(id, before, after)) {
                moving.add(name(id) + " " + size(id, before, after));
            }
        });
        return words(crossing, moving, "");
    }

    /** What begins to come in, has gone, or moves on from here to the next breakpoint. */
    private String shifting(Segment before, Segment after, List<ShareLine> end) {
        var crossing = new ArrayList<String>();
        var moving = new ArrayList<String>();
        var ids = ids(before.before(), after.after());
        ids.addAll(ids(after.blend(), end));
        ids.forEach(id -> takeover(id, before.before(), after.after()).ifPresent(crossing::add));
        largestFirst(ids, after.blend(), end).forEach(id -> {
            boolean was = shareOf(id, before.before()).signum() > 0;
            boolean is = shareOf(id, after.after()).signum() > 0;
            if (!was && is) {
                crossing.add(name(id) + " begins to come in");
            } else if (was && !is) {
                crossing.add(name(id) + " has left");
            }
            if (isSeen(id, after.blend(), end)) {
                moving.add(name(id) + " " + size(id, after.blend(), end));
            }
        });
        return words(
                crossing,
                moving,
                to(after).map(to -> "from here to " + told(to) + " ").orElse(""));
    }

    private static String words(List<String> crossing, List<String> moving, String span) {
        var words = new ArrayList<>(crossing);
        var largest = moving.subList(0, Math.min(MOVES_TOLD, moving.size()));
        for (int i = 0; i < largest.size(); i++) {
            words.add(i == 0 ? span + largest.get(i) : largest.get(i));
        }
        return words.isEmpty() ? "amounts below a thousandth move" : String.join("; ", words);
    }

    /** Whose goods take over from whose; empty where the suppliers stay, or the ingredient comes in or leaves. */
    private Optional<String> takeover(String id, List<ShareLine> before, List<ShareLine> after) {
        var old = suppliers(id, before);
        var fresh = suppliers(id, after);
        return old.isEmpty() || fresh.isEmpty() || old.equals(fresh)
                ? Optional.empty()
                : Optional.of(
                        name(id) + " from " + String.join(" and ", fresh) + " instead of " + String.join(" and ", old));
    }

    private static Set<String> suppliers(String id, List<ShareLine> blend) {
        return blend.stream()
                .filter(line -> line.ingredient().equals(id))
                .map(ShareLine::supplier)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> ids(List<ShareLine> before, List<ShareLine> after) {
        var ids = new TreeSet<String>();
        before.forEach(line -> ids.add(line.ingredient()));
        after.forEach(line -> ids.add(line.ingredient()));
        return ids;
    }

    private static List<String> largestFirst(Set<String> ids, List<ShareLine> before, List<ShareLine> after) {
        return ids.stream()
                .sorted((a, b) -> change(b, before, after)
                        .abs()
                        .compareTo(change(a, before, after).abs()))
                .toList();
    }

    private static BigFraction change(String id, List<ShareLine> before, List<ShareLine> after) {
        return shareOf(id, after).subtract(shareOf(id, before)).multiply(100);
    }

    private static boolean isSeen(String id, List<ShareLine> before, List<ShareLine> after) {
        return change(id, before, after).abs().compareTo(MIN_SHOWN_SHARE) >= 0;
    }

    private static String size(String id, List<ShareLine> before, List<ShareLine> after) {
        var change = change(id, before, after);
        return (change.signum() > 0 ? "+" : "-") + Figures.percent(change.abs().divide(100)) + " %";
    }

    private String name(String id) {
        return names.getOrDefault(id, id);
    }
}
