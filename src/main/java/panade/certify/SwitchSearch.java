package panade.certify;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Verdict.Optimum;
import panade.model.MixedModel;
import panade.model.Unproved;
import panade.solver.Deadline;

/**
 * Branch and bound (Land and Doig, Econometrica 28, 1960) over switches of nought or one, in which every branch is a
 * model of its own with an exact verdict. Models with a switch for each ingredient are large, and asking the solver
 * anew is many times as quick there as going on from the dictionary of the branch before.
 */
public final class SwitchSearch {
    private final MixedModel model;
    private final Prover prover;
    private final Deadline deadline;
    private final PriorityQueue<Node> open = new PriorityQueue<>(Comparator.comparing(Node::cost));
    private @Nullable Node best;
    private int looked;

    private SwitchSearch(MixedModel model, Prover prover, Deadline deadline) {
        this.model = model;
        this.prover = prover;
        this.deadline = deadline;
    }

    /** A model with some switches held, and its proved optimum. */
    private record Node(Map<Integer, BigInteger> held, Optimum optimum, BigFraction cost) {}

    /**
     * What came of it.
     *
     * @param best the proved optimum with every switch held at its best known value; empty where no point was found
     * @param switches those values
     * @param bound no point costs less; null where it is proved that there is none
     * @param looked how many branches were looked at
     */
    public record Ending(
            Optional<Optimum> best,
            Map<Integer, BigInteger> switches,
            @Nullable BigFraction bound,
            int looked) {
        public Ending {
            switches = Map.copyOf(switches);
        }
    }

    /**
     * Searches until nothing is open or the time is over.
     *
     * @param known switches that are known to leave a point; null where none are
     */
    public static Ending run(
            MixedModel model, @Nullable Map<Integer, BigInteger> known, Prover prover, Deadline deadline) {
        var search = new SwitchSearch(model, prover, deadline);
        search.weigh(Map.of());
        if (known != null) {
            search.weigh(known);
        }
        return search.ending();
    }

    private Ending ending() {
        while (!open.isEmpty() && !isClosed(open.element()) && !deadline.isOver()) {
            split(open.remove());
        }
        var next = open.peek();
        var found = best;
        if (found == null) {
            return new Ending(Optional.empty(), Map.of(), next == null ? null : next.cost(), looked);
        }
        var bound = next == null || isClosed(next) ? found.cost() : next.cost();
        var switches = model.rounded(found.optimum().point());
        return new Ending(Optional.of(held(switches)), switches, bound, looked);
    }

    /** The optimum with every switch held, as later work on it needs. */
    private Optimum held(Map<Integer, BigInteger> switches) {
        if (prover.prove(model.holding(switches)) instanceof Optimum optimum) {
            return optimum;
        }
        throw new Unproved("the best choice could not be proved");
    }

    private boolean isClosed(Node node) {
        return best != null && node.cost().compareTo(best.cost()) >= 0;
    }

    private void split(Node node) {
        int column = furthest(node.optimum().point());
        weigh(with(node, column, BigInteger.ONE));
        weigh(with(node, column, BigInteger.ZERO));
    }

    private static Map<Integer, BigInteger> with(Node node, int column, BigInteger value) {
        var held = new TreeMap<>(node.held());
        held.put(column, value);
        return held;
    }

    private void weigh(Map<Integer, BigInteger> held) {
        looked++;
        var verdict = prover.prove(model.holding(held));
        if (verdict instanceof Verdict.Impossible) {
            return;
        }
        if (!(verdict instanceof Optimum optimum)) {
            throw new Unproved("a branch could not be decided");
        }
        var node = new Node(held, optimum, optimum.model().costAt(optimum.point()));
        if (isClosed(node)) {
            return;
        }
        if (furthest(optimum.point()) < 0) {
            best = node;
        } else {
            open.add(node);
        }
    }

    /** The switch furthest from nought and one, lowest among equals; -1 where there is none between. */
    private int furthest(List<BigFraction> point) {
        int found = -1;
        var distance = BigFraction.ZERO;
        for (int column : model.whole().stream().sorted().toList()) {
            var value = point.get(column);
            var rest = BigFraction.ONE.subtract(value);
            var here = value.compareTo(rest) < 0 ? value : rest;
            if (here.compareTo(distance) > 0) {
                found = column;
                distance = here;
            }
        }
        return found;
    }
}
