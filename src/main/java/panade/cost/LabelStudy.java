package panade.cost;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.explain.conflict.Move;
import panade.label.LabelChange;
import panade.label.Panel;
import panade.label.nutrition.Format;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Quantity;

/** What changes do to the label of a blend, by the rules of the United States. */
public final class LabelStudy {
    private LabelStudy() {}

    /** From one certified blend to another. */
    public static LabelChange between(Blended before, Blended after) {
        return LabelChange.between(panel(before.brief(), before.blend()), panel(after.brief(), after.blend()));
    }

    private static Panel panel(Brief brief, Blend blend) {
        return Panel.of(brief, blend, Format.US);
    }

    /**
     * What each move of one bound alone does, solved with.
     *
     * @param moves those that cannot do it alone are passed over
     * @return by the move
     */
    public static Map<Move, LabelChange> ofMoves(Planner planner, Blended best, Iterable<Move> moves) {
        var changes = new LinkedHashMap<Move, LabelChange>();
        for (var move : moves) {
            moved(best.asked(), move)
                    .flatMap(changed -> planner.cheapest(changed).found())
                    .map(blend -> LabelChange.between(panel(best.brief(), best.blend()), panel(best.brief(), blend)))
                    .ifPresent(change -> changes.put(move, change));
        }
        return Map.copyOf(changes);
    }

    /** The brief with one number moved; empty when the move is not of a bound's number. */
    private static Optional<Brief> moved(Brief brief, Move move) {
        var to = move.to();
        if (to == null) {
            return Optional.empty();
        }
        var number = Quantity.of(to, move.unit(), "moved");
        return brief.bounds().stream()
                .filter(bound -> bound.id().equals(move.bound()))
                .findFirst()
                .map(bound -> brief.replacing(bound, bound.withNumber(move.side(), number)));
    }
}
