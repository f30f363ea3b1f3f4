package panade.certify.sensitivity;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict.Optimum;
import panade.certify.sensitivity.Sensitivity.Rate;
import panade.certify.simplex.BasisSystem;
import panade.model.Basis;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.WholePoint;

/**
 * What can be read off the basis of an optimum with one or two sparse solves, without a dictionary. Each question is
 * answered only where it is not degenerate in its own direction: what is zero in the basis does not fall, and what
 * costs nothing outside it does not come in. Elsewhere the answer is empty, and pivots have to settle the ties.
 */
final class SparseOptimum {
    /** Ties are settled by at most this many changes of the basis; beyond, it is left to pivots. */
    private static final int MAX_SETTLING = 12;

    private final LinearModel model;
    private final Basis basis;
    private final List<BigFraction> point;
    private final List<BigFraction> multipliers;
    private final BasisSystem system;
    /** What each column of the model costs more than it is worth; zero for those in the basis. */
    private final List<BigFraction> reduced;
    /** What is to spare in each row; zero for those that bind. */
    private final List<BigFraction> spare;
    /** Columns outside the basis that cost nothing, and rows that bind and are worth nothing. */
    private final List<Integer> freeColumns;

    private final List<Integer> freeRows;

    private SparseOptimum(
            LinearModel model,
            List<BigFraction> point,
            Basis basis,
            List<BigFraction> multipliers,
            BasisSystem system) {
        this.model = model;
        this.basis = basis;
        this.point = point;
        this.multipliers = multipliers;
        this.system = system;
        var worth = BasisSystem.combined(model, multipliers);
        this.reduced = new ArrayList<>();
        for (int j = 0; j < point.size(); j++) {
            reduced.add(basis.columns().contains(j) ? BigFraction.ZERO : cost(j).subtract(worth.get(j)));
        }
        this.spare = new ArrayList<>();
        var whole = WholePoint.of(point);
        for (int i = 0; i < model.rows().size(); i++) {
            spare.add(basis.rows().contains(i) ? spare(whole, model.rows().get(i)) : BigFraction.ZERO);
        }
        this.freeColumns = IntStream.range(0, reduced.size())
                .filter(j -> !basis.columns().contains(j) && reduced.get(j).signum() == 0)
                .boxed()
                .toList();
        this.freeRows = IntStream.range(0, multipliers.size())
                .filter(i -> binds(i) && multipliers.get(i).signum() == 0)
                .boxed()
                .toList();
    }

    private BigFraction cost(int column) {
        return model.columns().get(column).cost();
    }

    private static BigFraction spare(WholePoint whole, Row row) {
        var over = whole.dot(row.form()).subtract(row.right());
        return row.sense() == Sense.AT_MOST ? over.negate() : over;
    }

    /** The optimum, if its basis is known and can be solved with. */
    static Optional<SparseOptimum> of(Optimum optimum) {
        return optimum.claimedBasis()
                .flatMap(basis -> BasisSystem.of(optimum.model(), basis)
                        .map(system -> new SparseOptimum(
                                optimum.model(), optimum.point(), basis, optimum.multipliers(), system)));
    }

    /** Whether everything outside the basis would cost something, so that no other point costs as little. */
    boolean isUnique() {
        return freeColumns.isEmpty() && freeRows.isEmpty();
    }

    /** Whether a row binds and is no equation. */
    private boolean binds(int row) {
        return !basis.rows().contains(row) && model.rows().get(row).sense() != Sense.EQUAL;
    }

    /**
     * The rate of a row's right side, which moves up or down.
     *
     * @param sign 1 for up, -1 for down
     */
    Optional<Rate> moving(int row, int sign) {
        return moving(row, sign, MAX_SETTLING);
    }

    /** What is zero and would fall leaves the basis first, for whatever keeps prices right, as often as it takes. */
    private Optional<Rate> moving(int row, int sign, int steps) {
        if (basis.rows().contains(row)) {
            return Optional.empty();
        }
        var unit = sign > 0 ? BigFraction.ONE : BigFraction.ONE.negate();
        var ending = system.amounts(i -> i == row ? unit : BigFraction.ZERO).map(this::ending);
        if (ending.filter(Ending::isAtOnce).isPresent()) {
            return steps == 0
                    ? Optional.empty()
                    : without(ending.get()).flatMap(next -> next.moving(row, sign, steps - 1));
        }
        return ending.filter(found -> !goesOnBehind(found))
                .map(found -> new Rate(multipliers.get(row).multiply(unit), found.after()));
    }

    /** The same point by a basis without what is zero in this one; empty where nothing can come in for it. */
    private Optional<SparseOptimum> without(Ending zero) {
        return lifts(zero)
                .map(this::entering)
                .filter(coming -> coming.after() != null)
                .flatMap(coming -> {
                    var columns = new HashSet<>(basis.columns());
                    var rows = new HashSet<>(basis.rows());
                    if (zero.column() >= 0) {
                        columns.remove(zero.column());
                    } else {
                        rows.remove(zero.row());
                    }
                    if (coming.column() >= 0) {
                        columns.add(coming.column());
                    } else {
                        rows.add(coming.row());
                    }
                    return at(new Basis(columns, rows));
                });
    }

    /** The same point by another basis, where prices are right with it. */
    private Optional<SparseOptimum> at(Basis other) {
        return BasisSystem.of(model, other)
                .flatMap(solver -> solver.multipliers(this::cost)
                        .map(prices -> new SparseOptimum(model, point, other, prices, solver)))
                .filter(SparseOptimum::pricesAreRight);
    }

    private boolean pricesAreRight() {
        for (int i = 0; i < multipliers.size(); i++) {
            int sign = multipliers.get(i).signum();
            var sense = model.rows().get(i).sense();
            if ((sense == Sense.AT_LEAST && sign < 0) || (sense == Sense.AT_MOST && sign > 0)) {
                return false;
            }
        }
        return reduced.stream().allMatch(each -> each.signum() >= 0);
    }

    /** By how much everything outside the basis lifts what is zero in it. */
    private record Lifts(List<BigFraction> byColumn, List<BigFraction> byRow) {}

    private Optional<Lifts> lifts(Ending zero) {
        var form = zero.column() >= 0
                ? LinearForm.of(zero.column(), BigFraction.ONE)
                : model.rows().get(zero.row()).form();
        boolean turned = zero.row() >= 0 && model.rows().get(zero.row()).sense() == Sense.AT_MOST;
        return system.multipliers(form::at).map(shift -> {
            var gained = BasisSystem.combined(model, shift);
            var byColumn = new ArrayList<BigFraction>();
            for (int j = 0; j < gained.size(); j++) {
                var lift = (zero.column() >= 0 ? BigFraction.ZERO : form.at(j)).subtract(gained.get(j));
                byColumn.add(turned ? lift.negate() : lift);
            }
            var byRow = new ArrayList<BigFraction>();
            for (int i = 0; i < shift.size(); i++) {
                boolean most = model.rows().get(i).sense() == Sense.AT_MOST;
                byRow.add(most == turned ? shift.get(i) : shift.get(i).negate());
            }
            return new Lifts(byColumn, byRow);
        });
    }

    /** What comes in first as prices move for what is zero to leave (dual ratio test). */
    private Ending entering(Lifts lifts) {
        var coming = Ending.NEVER;
        for (int j = 0; j < reduced.size(); j++) {
            if (!basis.columns().contains(j)) {
                coming = coming.sooner(reduced.get(j), lifts.byColumn().get(j).negate(), j, -1);
            }
        }
        for (int i = 0; i < multipliers.size(); i++) {
            if (binds(i)) {
                coming = coming.sooner(
                        multipliers.get(i).abs(), lifts.byRow().get(i).negate(), -1, i);
            }
        }
        return coming;
    }

    /**
     * Where a change ends.
     *
     * @param after how often it can be added before something of the basis is zero; null where for ever
     * @param column what is zero then; -1 where it is no column
     * @param row what has nothing to spare then; -1 where it is no row
     */
    private record Ending(@Nullable BigFraction after, int column, int row) {
        static final Ending NEVER = new Ending(null, -1, -1);

        Ending sooner(BigFraction value, BigFraction change, int ofColumn, int ofRow) {
            if (change.signum() >= 0) {
                return this;
            }
            var end = value.divide(change.negate());
            return after == null || end.compareTo(after) < 0 ? new Ending(end, ofColumn, ofRow) : this;
        }

        boolean isAtOnce() {
            return after != null && after.signum() == 0;
        }
    }

    private Ending ending(List<BigFraction> change) {
        var ending = Ending.NEVER;
        var whole = WholePoint.of(change);
        for (int j : basis.columns()) {
            ending = ending.sooner(point.get(j), change.get(j), j, -1);
        }
        for (int i : basis.rows()) {
            var row = model.rows().get(i);
            var more = whole.dot(row.form());
            ending = ending.sooner(spare.get(i), row.sense() == Sense.AT_MOST ? more.negate() : more, -1, i);
        }
        return ending;
    }

    /** Whether a rate may go on behind its ending: something that costs nothing might take over there. */
    private boolean goesOnBehind(Ending ending) {
        return ending.after() != null && !isUnique();
    }

    /**
     * How far the costs of some columns move together until the blend changes.
     *
     * @param weights by column, what one unit of the moving price adds to its cost
     */
    Optional<Limit> movingPrice(LinearForm weights) {
        return system.multipliers(weights::at)
                .map(shift -> ending(weights, shift))
                .filter(ending -> !ending.isAtOnce())
                .flatMap(ending -> ending.after() == null
                        ? Optional.of(new Limit(null))
                        : comingIn(ending)
                                .map(this::ending)
                                .filter(this::changes)
                                .map(room -> new Limit(ending.after())));
    }

    /** Whether what comes in makes a difference: nothing is zero that would have to fall, and something falls. */
    private boolean changes(Ending room) {
        return room.after() != null && !room.isAtOnce();
    }

    /** What costs nothing first. */
    private Ending ending(LinearForm weights, List<BigFraction> shift) {
        var gained = BasisSystem.combined(model, shift);
        var ending = Ending.NEVER;
        for (int j = 0; j < reduced.size(); j++) {
            if (!basis.columns().contains(j)) {
                ending = ending.sooner(reduced.get(j), weights.at(j).subtract(gained.get(j)), j, -1);
            }
        }
        for (int i = 0; i < multipliers.size(); i++) {
            if (binds(i)) {
                boolean most = model.rows().get(i).sense() == Sense.AT_MOST;
                var change = most ? shift.get(i).negate() : shift.get(i);
                ending = ending.sooner(multipliers.get(i).abs(), change, -1, i);
            }
        }
        return ending;
    }

    /** What one unit of a column, or of what is to spare in a row, does to all columns. */
    private Optional<List<BigFraction>> comingIn(Ending ending) {
        if (ending.column() >= 0) {
            return column(ending.column());
        }
        boolean most = model.rows().get(ending.row()).sense() == Sense.AT_MOST;
        var unit = most ? BigFraction.ONE.negate() : BigFraction.ONE;
        return system.amounts(i -> i == ending.row() ? unit : BigFraction.ZERO);
    }

    /**
     * A limit.
     *
     * @param by null where there is none
     */
    record Limit(@Nullable BigFraction by) {}

    /**
     * How some columns that are not used come in as their costs are lowered together.
     *
     * @param weights by column, what one unit of the price adds to its cost, positive
     * @param own all columns of what comes in
     * @return empty where two come in at once or go out at once, or nothing makes room
     */
    Optional<Coming> entering(LinearForm weights, Set<Integer> own) {
        if (!isUnique() || own.stream().anyMatch(basis.columns()::contains)) {
            return Optional.empty();
        }
        int first = first(weights);
        return first < 0
                ? Optional.empty()
                : column(first).flatMap(change -> coming(reduced.get(first).divide(weights.at(first)), change));
    }

    /** The column that costs nothing first; -1 where two do at once. */
    private int first(LinearForm weights) {
        int best = -1;
        BigFraction least = null;
        boolean tied = false;
        for (int j : weights.columns()) {
            var by = reduced.get(j).divide(weights.at(j));
            int order = least == null ? -1 : by.compareTo(least);
            tied = order == 0 || (tied && order > 0);
            best = order < 0 ? j : best;
            least = order < 0 ? by : least;
        }
        return tied ? -1 : best;
    }

    /** What one unit of a column does to all others. */
    private Optional<List<BigFraction>> column(int column) {
        return system.amounts(i -> model.rows().get(i).form().at(column).negate())
                .map(change -> {
                    var all = new ArrayList<>(change);
                    all.set(column, BigFraction.ONE);
                    return all;
                });
    }

    private Optional<Coming> coming(BigFraction by, List<BigFraction> change) {
        var amount = ending(change).after();
        if (amount == null || amount.signum() == 0) {
            return Optional.empty();
        }
        var after = new ArrayList<BigFraction>();
        for (int j = 0; j < point.size(); j++) {
            var each = change.get(j);
            after.add(each.signum() == 0 ? point.get(j) : point.get(j).add(each.multiply(amount)));
        }
        return Optional.of(new Coming(by, after));
    }

    /** What comes in when its price has fallen by so much, and the point just below. */
    record Coming(BigFraction by, List<BigFraction> after) {}
}
