package panade.assemble;

import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.explain.Explanation.PropertyValue;
import panade.explain.Room.PropertyRoom;
import panade.explain.conflict.Move;
import panade.label.LabelChange;
import panade.reach.ShelfTarget;
import panade.reach.Target;
import panade.result.ReachResult;
import panade.result.ReachResult.Goal;
import panade.result.ReachResult.PropertyEnd;
import panade.result.ReachResult.PropertyRange;
import panade.result.ReachResult.Sense;
import panade.result.ReachResult.ShelfLine;
import panade.result.ReachResult.ShelfStep;

/** Makes the result of {@code reach}. */
public final class ReachResults {
    private final Target target;

    private ReachResults(Target target) {
        this.target = target;
    }

    /**
     * The result.
     *
     * @param named ids of the properties to tell when money is to spare
     */
    public static ReachResult of(Target target, Set<String> named) {
        return new ReachResults(target).result(named);
    }

    private ReachResult result(Set<String> named) {
        var shelf = target.shelf();
        var batch = target.batch();
        return new ReachResult(
                new Goal(target.targetPerKg()),
                target.isMet(),
                target.gapPerKg(),
                BlendResults.partOf(target.best()),
                shelf == null
                        ? null
                        : shelf.lines().stream().map(ReachResults::line).toList(),
                target.moves().stream()
                        .map(move -> move(move, target.labels().get(move)))
                        .toList(),
                target.pair().stream().map(move -> move(move, null)).toList(),
                batch == null ? null : batch.base(),
                target.prices().stream().map(this::price).toList(),
                target.atTarget().stream().flatMap(ReachResults::ends).toList(),
                target.open(),
                RemarkLines.of(target.best().asked().remarks()),
                batch == null ? null : batch.text(),
                target.atTarget().stream()
                        .filter(room -> named.contains(room.property()))
                        .map(this::range)
                        .toList());
    }

    private static ShelfLine line(ShelfTarget.Line line) {
        return new ShelfLine(ShelfStep.valueOf(line.kind().name()), line.part(), line.taken(), line.left());
    }

    private static ReachResult.Move move(Move move, @Nullable LabelChange label) {
        var kept = move.kept();
        return new ReachResult.Move(
                move.path(),
                move.origin().file(),
                move.name(),
                move.from(),
                move.to(),
                move.unit().symbol(),
                kept == null ? null : kept.number(),
                kept == null ? null : kept.unit().symbol(),
                move.costPerKg(),
                label == null ? null : LabelChanges.of(label));
    }

    private ReachResult.PriceMove price(Target.PriceMove price) {
        return new ReachResult.PriceMove(
                price.ingredient(),
                price.supplier(),
                price.from(),
                price.to(),
                price.costPerKg(),
                target.best().brief().set().ingredient(price.ingredient()).name());
    }

    private static Stream<PropertyEnd> ends(PropertyRoom room) {
        var unit = room.unit().symbol();
        return Stream.of(
                new PropertyEnd(room.property(), Sense.MAX, room.max(), unit),
                new PropertyEnd(room.property(), Sense.MIN, room.min(), unit));
    }

    private PropertyRange range(PropertyRoom room) {
        return new PropertyRange(
                target.best().brief().set().property(room.property()).title(),
                now(room.property()),
                room.min(),
                room.max(),
                room.unit().symbol());
    }

    private @Nullable BigFraction now(String property) {
        return target.best().explanation().properties().stream()
                .filter(value -> value.property().equals(property))
                .findFirst()
                .map(PropertyValue::value)
                .orElse(null);
    }
}
