package panade.vary;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.IntStream;
import panade.audit.Audit;
import panade.domain.Bound;
import panade.plan.Outcome.Blended;

/**
 * How often a blend keeps its bounds when what its ingredients hold is drawn at random, by measuring it again with the
 * values of each draw. Bounds on what trials taught are left out: what is not known cannot be drawn.
 *
 * @param draws how many times values were drawn
 * @param values how many values vary
 * @param all draws in which every bound was kept
 * @param bounds those that what ingredients hold can break, in the brief's order
 */
public record HeldStudy(int draws, int values, int all, List<Held> bounds) {
    public HeldStudy {
        bounds = List.copyOf(bounds);
    }

    /** In how many draws a bound was kept, on both of its sides. */
    public record Held(Bound bound, int draws) {}

    /**
     * The study of a blend.
     *
     * @param threads how many to use; the result does not depend on it
     * @return empty when no ingredient of the brief states a spread
     */
    public static Optional<HeldStudy> of(Blended blended, int draws, long seed, int threads) {
        var brief = blended.brief().asStated();
        var values = DrawnValues.of(brief, seed);
        if (values.count() == 0) {
            return Optional.empty();
        }
        var sides = KeptSide.of(blended.brief()).stream()
                .filter(side -> !side.bound().isLearned())
                .toList();
        var kept = inThreads(
                threads,
                () -> IntStream.range(0, draws)
                        .parallel()
                        .mapToObj(draw ->
                                kept(sides, new Audit(brief.withIngredientSet(values.set(draw)), blended.blend())))
                        .toList());
        return Optional.of(new HeldStudy(
                draws,
                values.count(),
                (int) kept.stream()
                        .filter(each -> each.cardinality() == sides.size())
                        .count(),
                held(sides, kept)));
    }

    private static List<BitSet> inThreads(int threads, Callable<List<BitSet>> work) {
        var pool = new ForkJoinPool(threads);
        try {
            return pool.invoke(ForkJoinTask.adapt(work));
        } finally {
            pool.shutdown();
        }
    }

    private static BitSet kept(List<KeptSide> sides, Audit audit) {
        var kept = new BitSet();
        for (int i = 0; i < sides.size(); i++) {
            kept.set(i, !sides.get(i).standing(audit).broken());
        }
        return kept;
    }

    private static List<Held> held(List<KeptSide> sides, List<BitSet> kept) {
        var held = new ArrayList<Held>();
        for (int i = 0; i < sides.size(); i++) {
            var bound = sides.get(i).bound();
            int first = i;
            while (i + 1 < sides.size() && sides.get(i + 1).bound().id().equals(bound.id())) {
                i++;
            }
            int last = i;
            held.add(new Held(bound, (int) kept.stream()
                    .filter(each -> each.nextClearBit(first) > last)
                    .count()));
        }
        return held;
    }
}
