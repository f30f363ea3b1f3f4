package panade.remark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import panade.compile.CompiledBrief;
import panade.compile.Limit.OfBound;
import panade.domain.Bound;
import panade.domain.Brief;
import panade.domain.LimitKind;
import panade.domain.Side;
import panade.domain.origin.Remark;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.quantity.Quantity;

/**
 * Remarks on bounds that do nothing: whatever is mixed keeps them, or what they are measured per cannot be there. A
 * bound that only the other bounds keep idle is not told of: it stands guard for the day they are eased.
 */
record IdleRemarks(Brief brief, CompiledBrief compiled) {

    List<Remark> all() {
        var remarks = new ArrayList<Remark>();
        for (int i = 0; i < compiled.rows().size(); i++) {
            if (compiled.rows().get(i) instanceof OfBound of && isWritten(of.bound())) {
                remark(compiled.model().rows().get(i), of).ifPresent(remarks::add);
            }
        }
        return remarks;
    }

    /** Ceilings of the set are written once for every brief, and may well do nothing in one. */
    private static boolean isWritten(Bound bound) {
        return bound.kind() == LimitKind.BRIEF || bound.kind() == LimitKind.STAGE;
    }

    private Optional<Remark> remark(Row row, OfBound of) {
        var bound = of.bound();
        if (measuresNothing(bound)) {
            return Optional.of(
                    Words.on(
                            bound,
                            "\"" + bound.name() + "\" measures nothing: there can be no "
                                    + (bound.per() == null ? "" : bound.per().name())
                                    + " in a blend to measure it per. It is always met. Let something of that in, or drop it."));
        }
        var limit = of.side() == Side.MIN ? bound.min() : bound.max();
        if (of.side() == Side.FIXED || limit == null || bound.sure() != null || !cannotBeMissed(row)) {
            return Optional.empty();
        }
        return Optional.of(Words.on(bound, text(bound, of.side(), limit)));
    }

    private static String text(Bound bound, Side side, Quantity limit) {
        var least = side == Side.MIN;
        return "No blend can miss \"" + bound.name() + "\": whatever is mixed of what may be used, it is "
                + (least ? "at least " : "at most ") + limit.text()
                + ", so this " + (least ? "minimum" : "maximum")
                + " does nothing. Check number and unit" + amount(limit) + ".";
    }

    private static String amount(Quantity limit) {
        return Bound.isAmount(limit) ? "; a weight counts for the whole batch" : "";
    }

    /** Nothing that the ratio is measured per can be in a blend under the other bounds. */
    private boolean measuresNothing(Bound bound) {
        var per = bound.per();
        if (per == null || bound.of().parts().isEmpty()) {
            return false;
        }
        return compiled.formOf(per, brief.composition()).isZero();
    }

    /**
     * Whether every mixture of what may be used keeps a row. Shares add up to one, so that is so where every ingredient
     * keeps it on its own.
     */
    private boolean cannotBeMissed(Row row) {
        for (int j = 0; j < compiled.columns().size(); j++) {
            var room = row.form().at(j).subtract(row.right());
            int sign = row.sense() == Sense.AT_LEAST ? room.signum() : -room.signum();
            if (sign < 0) {
                return false;
            }
        }
        return true;
    }
}
