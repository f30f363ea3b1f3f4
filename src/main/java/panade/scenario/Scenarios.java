package panade.scenario;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.model.Basis;
import panade.model.Unproved;

/**
 * Answers draws of prices. Each is walked to from today's best basis along known ways; one that gets lost is solved by
 * whoever is asked then. What comes out depends on the model, the seed and the number of draws, and on nothing else.
 */
public final class Scenarios {
    /** Draws that are done at a time. */
    static final int BLOCK = 1024;

    private static final int PILOT = 4 * BLOCK;
    private static final int STANDING = 8;

    /** A cost that equals what was hoped for must not miss it by binary rounding; draws are proved to as much. */
    private static final double BINARY = 1e-9;

    private final ScenarioModel model;
    private final Geometry geometry;
    private final BasisGraph graph;
    private final Vertex today;
    private final Function<List<BigFraction>, Basis> fallbackSolver;

    /**
     * Scenarios of a model.
     *
     * @param fallbackSolver solves the model at other costs, for draws on which the walk gets lost; may be asked by
     *     several threads at once
     */
    public Scenarios(ScenarioModel model, Function<List<BigFraction>, Basis> fallbackSolver) {
        this.model = model;
        this.fallbackSolver = fallbackSolver;
        this.geometry = new Geometry(model.model());
        this.graph = new BasisGraph(geometry);
        this.today = graph.vertex(geometry.variables(model.optimum()))
                .orElseThrow(() -> new Unproved("binary floating point cannot follow this model"));
    }

    /** One thread's tools. */
    private final class Worker {
        private final Walker walker = new Walker(geometry, graph, today);
        private final Drawn drawn = new Drawn(model);

        Vertex best(long draw) {
            drawn.draw(draw);
            return walker.best(drawn.costs()).orElseGet(() -> rescued(draw));
        }
    }

    private Vertex rescued(long draw) {
        var variables = geometry.variables(fallbackSolver.apply(model.costs(draw)));
        return graph.vertex(variables)
                .orElseThrow(() -> new Unproved("binary floating point cannot follow this model"));
    }

    /** The least cost at the prices of one draw, as binary floating point has it. */
    public BigFraction leastCost(long draw) {
        var worker = new Worker();
        return BigFraction.from(worker.best(draw).cost(worker.drawn.costs()));
    }

    /** How the model does over draws 0 to {@code draws} - 1. */
    public Distribution run(long draws, int threads) {
        return run(draws, threads, Optional.empty());
    }

    /**
     * The same, with a cost that is hoped for.
     *
     * @param threads no more are started than there are blocks of draws
     * @param target counted as met by a least cost that is no higher
     */
    public Distribution run(long draws, int threads, Optional<BigFraction> target) {
        double hoped = target.map(cost -> cost.doubleValue() * (1 + BINARY)).orElse(Double.NaN);
        int useful = (int) Math.min(threads, (draws + BLOCK - 1) / BLOCK);
        var candidates = standing(draws);
        var tallies = new ArrayList<Tally>();
        var next = new AtomicLong();
        ExecutorService workers = Executors.newFixedThreadPool(useful);
        try {
            var work = new ArrayList<Future<Tally>>();
            for (int i = 0; i < useful; i++) {
                work.add(workers.submit(() -> work(draws, next, hoped, candidates)));
            }
            for (var done : work) {
                tallies.add(done.get());
            }
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Unproved open) {
                throw open;
            }
            throw new Unproved("a draw could not be answered: " + e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Unproved("interrupted");
        } finally {
            workers.shutdownNow();
        }
        var total = tally(hoped, candidates);
        tallies.forEach(total::add);
        return new Distribution(
                model, draws, total, candidates.stream().map(this::point).toList());
    }

    private Tally tally(double hoped, List<Vertex> candidates) {
        return new Tally(model, today.cost(model.today()), hoped, candidates);
    }

    private Tally work(long draws, AtomicLong next, double hoped, List<Vertex> candidates) {
        var worker = new Worker();
        var tally = tally(hoped, candidates);
        for (long from = next.getAndAdd(BLOCK); from < draws; from = next.getAndAdd(BLOCK)) {
            for (long draw = from; draw < Math.min(draws, from + BLOCK); draw++) {
                tally.add(draw, worker.drawn, worker.best(draw));
            }
            tally.carry();
        }
        return tally;
    }

    /** Today's best, then the blends that are best most often in the first draws. */
    private List<Vertex> standing(long draws) {
        var worker = new Worker();
        Map<BitSet, Long> hits = new HashMap<>();
        for (long draw = 0; draw < Math.min(draws, PILOT); draw++) {
            hits.merge(worker.best(draw).variables(), 1L, Long::sum);
        }
        hits.remove(today.variables());
        var candidates = new ArrayList<Vertex>();
        candidates.add(today);
        hits.entrySet().stream()
                .sorted(Map.Entry.<BitSet, Long>comparingByValue()
                        .reversed()
                        .thenComparing(entry -> entry.getKey().toString(), Comparator.naturalOrder()))
                .limit(STANDING)
                .forEach(entry -> graph.vertex(entry.getKey()).ifPresent(candidates::add));
        return List.copyOf(candidates);
    }

    private Basis point(Vertex vertex) {
        return geometry.basis(vertex.variables());
    }
}
