package panade.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Prover;
import panade.certify.Sensitivity;
import panade.certify.Sensitivity.Eased;
import panade.certify.Verdict.Optimum;
import panade.compile.BriefCompiler;
import panade.compile.CompiledBrief;
import panade.compile.CompiledBrief.Limit;
import panade.domain.Brief;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.quantity.Quantity;

/**
 * Finds what must give for the least cost to come down to a ceiling: the ceiling is one more row, and bounds are moved
 * until all rows hold together. Every move told has been solved with.
 */
public final class CostCeiling {
    /** Pairs are looked for among this many bounds, those that get furthest alone. */
    private static final int PAIRED = 8;

    private final Brief brief;
    private final CompiledBrief plain;
    private final CompiledBrief capped;
    private final Optimum optimum;
    private final Sensitivity sensitivity;
    private final BigFraction level;
    private final BigFraction least;
    private final Prover prover;

    /**
     * The ceiling on a brief whose least cost lies above it.
     *
     * @param optimum the proved optimum of the brief's own model
     * @param perKg the ceiling
     * @param prover proves the models that moves lead to
     */
    public CostCeiling(Brief brief, Optimum optimum, BigFraction perKg, Prover prover) {
        this.prover = prover;
        this.brief = brief;
        this.optimum = optimum;
        this.sensitivity = new Sensitivity(optimum);
        this.level = perKg;
        this.plain = BriefCompiler.compile(brief);
        this.least = plain.model().costAt(optimum.point());
        this.capped = capped(plain, perKg);
    }

    private static CompiledBrief capped(CompiledBrief plain, BigFraction perKg) {
        var costs = new HashMap<Integer, BigFraction>();
        for (int j = 0; j < plain.columns().size(); j++) {
            costs.put(j, plain.model().columns().get(j).cost());
        }
        var rows = new ArrayList<>(plain.model().rows());
        rows.add(new Row("cost ceiling", costs, Sense.AT_MOST, perKg));
        var limits = new ArrayList<>(plain.rows());
        limits.add(new Limit.OfBatch());
        return new CompiledBrief(new LinearModel(plain.model().columns(), rows), plain.columns(), limits);
    }

    /** Each bound that holds the cost up, moved alone. */
    public List<Move> moves() {
        return holders().stream().map(this::move).toList();
    }

    /**
     * A row whose number, when eased, lowers the cost; by convexity no other row can do anything alone.
     *
     * @param number what stands behind the row
     * @param eased what comes of easing it alone as far as is needed
     */
    private record Holder(int row, NumberMove number, Eased eased) {}

    private List<Holder> holders() {
        var found = new ArrayList<Holder>();
        for (int row = 0; row < plain.rows().size(); row++) {
            if (!(plain.rows().get(row) instanceof Limit.OfBatch)) {
                holder(row).ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Holder> holder(int row) {
        var modelRow = plain.model().rows().get(row);
        if (!modelRow.activity(optimum.point()).equals(modelRow.right())) {
            return Optional.empty();
        }
        return Stream.of(true, false)
                .filter(up -> modelRow.sense() != (up ? Sense.AT_LEAST : Sense.AT_MOST))
                .map(up -> sensitivity.easing(row, up, level))
                .filter(eased -> eased.cost().subtract(least).signum() < 0)
                .findFirst()
                .map(eased -> new Holder(row, new NumberMove(brief, plain, row), eased));
    }

    private Move move(Holder holder) {
        var enough = Optional.of(holder.eased())
                .filter(Eased::arrived)
                .map(eased -> new NumberMove(brief, capped, holder.row()).improved(eased.point(), prover))
                .flatMap(holder.number()::neededAt);
        var cost = enough.flatMap(number -> cost(holder.number().changed(brief, number)));
        return cost.map(found -> told(holder.number(), enough.orElseThrow(), found))
                .orElseGet(() -> told(holder.number(), null, holder.eased().cost()));
    }

    private Optional<BigFraction> cost(Brief changed) {
        return cost(BriefCompiler.compile(changed).model());
    }

    private Optional<BigFraction> cost(LinearModel model) {
        return prover.prove(model) instanceof Optimum found
                ? Optional.of(model.costAt(found.point()))
                : Optional.empty();
    }

    /** The two bounds whose joint move, each counted as a part of its own number, is least; empty when no two do. */
    public List<Move> cheapestPair() {
        var holders = holders().stream()
                .sorted(Comparator.comparing(
                        holder -> holder.eased().cost(), (a, b) -> a.subtract(b).signum()))
                .limit(PAIRED)
                .toList();
        Optional<Pair> best = Optional.empty();
        for (int i = 0; i < holders.size(); i++) {
            for (int k = i + 1; k < holders.size(); k++) {
                best = smaller(best, pair(holders.get(i), holders.get(k)));
            }
        }
        return best.map(this::told).orElse(List.of());
    }

    /** Two numbers moved, and the sum of the parts by which they move. */
    private record Pair(NumberMove first, Quantity one, NumberMove second, Quantity other, BigFraction parts) {}

    private static Optional<Pair> smaller(Optional<Pair> a, Optional<Pair> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.isEmpty() ? b : a;
        }
        return b.get().parts().subtract(a.get().parts()).signum() < 0 ? b : a;
    }

    private Optional<Pair> pair(Holder a, Holder b) {
        if (leastWithout(a.row(), b.row()).subtract(level).signum() > 0) {
            return Optional.empty();
        }
        var weights = Map.of(a.row(), weight(a.number()), b.row(), weight(b.number()));
        var point = new Elastic(capped.model(), prover).leastGiving(weights);
        var one = point.flatMap(a.number()::neededAt);
        var other = point.flatMap(b.number()::neededAt);
        return one.flatMap(left -> other.map(right -> new Pair(
                a.number(), left, b.number(), right, part(a.number(), left).add(part(b.number(), right)))));
    }

    private BigFraction leastWithout(int a, int b) {
        var rows = new ArrayList<>(plain.model().rows());
        rows.remove(Math.max(a, b));
        rows.remove(Math.min(a, b));
        return cost(new LinearModel(plain.model().columns(), rows)).orElseThrow();
    }

    private static BigFraction weight(NumberMove move) {
        var size = move.number().base().abs();
        return size.signum() == 0 ? BigFraction.of(1000) : size.reciprocal();
    }

    private static BigFraction part(NumberMove move, Quantity to) {
        return to.base().subtract(move.number().base()).abs().multiply(weight(move));
    }

    private List<Move> told(Pair pair) {
        var changed = pair.second().changed(pair.first().changed(brief, pair.one()), pair.other());
        return cost(changed)
                .map(cost -> List.of(told(pair.first(), pair.one(), cost), told(pair.second(), pair.other(), cost)))
                .orElse(List.of());
    }

    private static Move told(NumberMove move, @Nullable Quantity to, BigFraction cost) {
        var from = move.number();
        return new Move(move.path(), move.name(), from.unit(), from.number(), to == null ? null : to.number(), cost);
    }
}
