package panade.explain;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import panade.certify.Prover;
import panade.certify.Verdict;
import panade.certify.Verdict.Impossible;
import panade.compile.CompiledBrief;
import panade.compile.CompiledBrief.Limit;
import panade.model.LinearModel;

/**
 * Finds irreducible sets of conflicting rows by a deletion filter over the rows that an exact contradiction uses
 * (Chinneck and Dravnieks, ORSA J. on Computing 3, 1991). More sets come from a hitting-set tree (Reiter, Artificial
 * Intelligence 32, 1987). That shares add up to the batch, and are not negative, is never a member.
 */
final class ConflictFinder {
    /** How many row sets are tried at most when several conflicts are looked for. */
    private static final int TRIES = 400;

    private final CompiledBrief compiled;

    ConflictFinder(CompiledBrief compiled) {
        this.compiled = compiled;
    }

    /** Some irreducible sets of row indices, at most that many, and whether there are no others. */
    record Found(List<Set<Integer>> sets, boolean complete) {}

    /** One set, reached from a contradiction that has been proved. */
    Set<Integer> first(Impossible proof) {
        return shrunk(support(proof, allRows()));
    }

    /** Up to {@code most} sets. */
    Found all(Impossible proof, int most) {
        var sets = new ArrayList<Set<Integer>>();
        var seen = new HashSet<Set<Integer>>();
        var waiting = new ArrayDeque<Set<Integer>>();
        waiting.add(Set.of());
        sets.add(first(proof));
        int tries = 0;
        while (!waiting.isEmpty() && sets.size() < most && tries < TRIES) {
            tries++;
            var removed = waiting.remove();
            var conflict = avoiding(removed, sets);
            for (int row : conflict) {
                var more = new TreeSet<>(removed);
                more.add(row);
                if (seen.add(more)) {
                    waiting.add(more);
                }
            }
        }
        return new Found(List.copyOf(sets), waiting.isEmpty());
    }

    /** A conflict that uses none of the removed rows: a known one if possible, else a new one, else none. */
    private Set<Integer> avoiding(Set<Integer> removed, List<Set<Integer>> known) {
        var fitting =
                known.stream().filter(set -> Collections.disjoint(set, removed)).findFirst();
        if (fitting.isPresent()) {
            return fitting.get();
        }
        var rest = new ArrayList<>(allRows());
        rest.removeAll(removed);
        var verdict = verdict(rest);
        if (!(verdict instanceof Impossible impossible)) {
            return Set.of();
        }
        var fresh = shrunk(support(impossible, rest));
        known.add(fresh);
        return fresh;
    }

    private List<Integer> allRows() {
        var rows = new ArrayList<Integer>();
        for (int i = 0; i < compiled.rows().size(); i++) {
            rows.add(i);
        }
        return rows;
    }

    /** The rows with a multiplier in a contradiction over the listed rows. */
    private static List<Integer> support(Impossible proof, List<Integer> rows) {
        var support = new ArrayList<Integer>();
        for (int i = 0; i < rows.size(); i++) {
            if (proof.multipliers().get(i).signum() != 0) {
                support.add(rows.get(i));
            }
        }
        return support;
    }

    /** Drops rows as long as the rest stays impossible; what remains is irreducible. */
    private Set<Integer> shrunk(List<Integer> rows) {
        var kept = new ArrayList<>(rows);
        for (int row : List.copyOf(rows)) {
            if (!kept.contains(row) || isBatch(row)) {
                continue;
            }
            var without = new ArrayList<>(kept);
            without.remove(Integer.valueOf(row));
            if (verdict(withBatch(without)) instanceof Impossible impossible) {
                kept.retainAll(support(impossible, withBatch(without)));
            }
        }
        var members = new LinkedHashSet<Integer>();
        kept.stream().filter(row -> !isBatch(row)).sorted().forEach(members::add);
        return members;
    }

    private boolean isBatch(int row) {
        return compiled.rows().get(row) instanceof Limit.OfBatch;
    }

    private List<Integer> withBatch(List<Integer> rows) {
        var all = new TreeSet<>(rows);
        allRows().stream().filter(this::isBatch).forEach(all::add);
        return List.copyOf(all);
    }

    /**
     * Whether the listed rows can hold together. Costs stay, because they keep the pivots from wandering among ties.
     */
    private Verdict verdict(List<Integer> rows) {
        var chosen = rows.stream().map(compiled.model().rows()::get).toList();
        var model = new LinearModel(compiled.model().columns(), chosen);
        return Prover.EXACT.prove(model);
    }
}
