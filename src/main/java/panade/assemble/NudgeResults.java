package panade.assemble;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.audit.Audit;
import panade.domain.Blend;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Stage;
import panade.domain.Use;
import panade.label.LabelChange;
import panade.label.Panel;
import panade.label.nutrition.Format;
import panade.nudge.FewChanges;
import panade.nudge.FewChanges.Best;
import panade.nudge.Nudge;
import panade.nudge.Start;
import panade.quantity.Quantity;
import panade.result.formula.NudgeResult;
import panade.result.formula.NudgeResult.Amount;
import panade.result.formula.NudgeResult.Few;
import panade.result.formula.NudgeResult.Point;

/** Makes the result of {@code nudge}. */
public final class NudgeResults {
    /** A bound is at its limit within this part of it. */
    private static final int NEAR = 200;

    private final Start made;
    private final Nudge nudge;
    private final Brief brief;
    private final Blend from;
    private final MadeResults madeResults;

    private NudgeResults(Start made, Nudge nudge) {
        this.made = made;
        this.nudge = nudge;
        this.brief = made.brief();
        this.from = made.blend();
        this.madeResults = new MadeResults(made);
    }

    /** The result of changes of a formula. */
    public static NudgeResult of(String title, Start made, Nudge nudge) {
        return new NudgeResults(made, nudge).result(title);
    }

    private NudgeResult result(String title) {
        var points = nudge.path().points();
        return new NudgeResult(
                madeResults.result(points.get(points.size() - 1).costPerKg()),
                path(),
                nudge.path().straight(),
                nudge.few().stream().map(this::few).toList(),
                RemarkLines.of(brief.remarks()),
                names(nudge.kept()),
                names(made.homeless()),
                title,
                brief.batch().text(),
                brief.batch().base(),
                mended(),
                otherFaults(),
                made.boughtCheapest().blend().costPerKg());
    }

    /** What else keeps the formula from being a blend of the brief; nothing where a bound's value is not known. */
    private List<String> otherFaults() {
        return brief.bounds().stream().allMatch(madeResults::isKnown)
                        && made.homeless().isEmpty()
                ? new Audit(brief, from)
                        .faults().stream()
                                .filter(fault -> !fault.startsWith("breaks \""))
                                .toList()
                : List.of();
    }

    private List<String> names(Set<String> ids) {
        return ids.stream().map(id -> brief.set().ingredient(id).name()).toList();
    }

    private List<Point> path() {
        var points = new ArrayList<Point>();
        if (nudge.path().points().get(0).moved().signum() > 0) {
            points.add(new Point(BigFraction.ZERO, from.costPerKg(), ShareLines.of(brief, from), false));
        }
        nudge.path()
                .points()
                .forEach(point -> points.add(
                        new Point(point.moved(), point.costPerKg(), ShareLines.of(brief, point.blend()), true)));
        return points;
    }

    private Few few(FewChanges.Few few) {
        return few.best()
                .fold(
                        best -> found(few.changes(), best),
                        () -> without(few.changes(), null),
                        reason -> without(few.changes(), reason));
    }

    private static Few without(int changes, @Nullable String undecided) {
        return new Few(
                changes,
                null,
                null,
                List.of(),
                List.of(),
                undecided == null,
                false,
                undecided,
                null,
                List.of(),
                List.of(),
                List.of());
    }

    private Few found(int changes, Best best) {
        return new Few(
                changes,
                best.costPerKg(),
                best.leastPerKg(),
                List.copyOf(best.changed()),
                ShareLines.of(brief, best.blend()),
                best.proved(),
                best.weighed(),
                null,
                LabelChanges.of(LabelChange.between(panel(from), panel(best.blend()))),
                amounts(best.blend()),
                mended(),
                binding(best.blend()));
    }

    private Panel panel(Blend blend) {
        return Panel.of(brief, blend, Format.US);
    }

    private List<Amount> amounts(Blend blend) {
        return Stream.concat(
                        made.shares().keySet().stream(), blend.lines().stream().map(Blend.Line::use))
                .distinct()
                .filter(use -> made.changeTo(blend, use).signum() != 0)
                .map(use -> amount(blend, use))
                .sorted(Comparator.comparing((Amount amount) -> amount.change().abs())
                        .reversed()
                        .thenComparing(Amount::name))
                .toList();
    }

    private Amount amount(Blend blend, Use use) {
        return new Amount(
                brief.set().ingredient(use.ingredient()).name(),
                brief.stages().stream()
                        .filter(stage -> stage.id().equals(use.stage()))
                        .map(Stage::title)
                        .findFirst()
                        .orElse(use.stage()),
                made.changeTo(blend, use).multiply(brief.batch().base()));
    }

    /** What the formula breaks: every blend told keeps it. */
    private List<String> mended() {
        return brief.bounds().stream()
                .filter(bound -> madeResults.isKnown(bound) && !madeResults.isMet(bound))
                .map(Bound::title)
                .toList();
    }

    private List<String> binding(Blend blend) {
        var before = new Audit(brief, from);
        var after = new Audit(brief, blend);
        return brief.bounds().stream()
                .filter(bound -> bound.kind() != LimitKind.LABEL && madeResults.isKnown(bound))
                .filter(bound -> touches(after, bound) && !touches(before, bound))
                .map(Bound::title)
                .toList();
    }

    /** Whether a bound is at one of its limits, or within a part of it that no cook would call room. */
    private static boolean touches(Audit audit, Bound bound) {
        return Stream.of(Optional.ofNullable(bound.min()), Optional.ofNullable(bound.max()))
                .flatMap(Optional::stream)
                .anyMatch(limit -> touches(audit, bound, limit));
    }

    private static boolean touches(Audit audit, Bound bound, Quantity limit) {
        var value = audit.value(bound);
        var number = audit.number(bound, limit);
        return value.isPresent()
                && number.isPresent()
                && value.get()
                                .subtract(number.get())
                                .abs()
                                .multiply(NEAR)
                                .compareTo(number.get().abs())
                        <= 0;
    }
}
