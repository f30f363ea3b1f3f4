package panade.explain.conflict;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import panade.certify.Prover;
import panade.certify.Verdict.Impossible;
import panade.compile.CompiledBrief;
import panade.explain.conflict.Trials.Search;
import panade.model.LinearModel;

/**
 * Finds irreducible sets of demands that cannot hold together. Among bounds alone it is a deletion filter over the rows
 * that an exact contradiction uses (Chinneck and Dravnieks, ORSA J. on Computing 3, 1991); with rules, halving (Junker,
 * "QuickXplain", AAAI 2004). More sets come from a hitting-set tree (Reiter, Artificial Intelligence 32, 1987). That
 * shares add up to the batch, and are not negative, is never a member.
 */
final class ConflictFinder {
    /** How many sets of demands are tried at most when several conflicts are looked for. */
    private static final int TRIES = 400;

    private final CompiledBrief compiled;
    private final DemandModels models;
    private final Trials trials;
    private final AtomicBoolean open = new AtomicBoolean();

    ConflictFinder(CompiledBrief compiled, DemandModels models, Trials trials) {
        this.compiled = compiled;
        this.models = models;
        this.trials = trials;
    }

    /** Some irreducible sets, at most that many, and whether it is proved that there are no others. */
    record Found(List<Set<Demand>> sets, boolean complete) {}

    /** Whether demands can hold together. */
    enum Possible {
        YES,
        NO,
        OPEN
    }

    /** Whether some question was left open, for want of time, so that sets may be larger than need be. */
    boolean isOpen() {
        return open.get();
    }

    /** Up to {@code most} sets; empty when nothing is in conflict, or it cannot be found in time. */
    Found all(int most) {
        var sets = new ArrayList<Set<Demand>>();
        var seen = new HashSet<Set<Demand>>();
        var waiting = new ArrayDeque<Set<Demand>>();
        waiting.add(Set.of());
        int tries = 0;
        while (!waiting.isEmpty() && sets.size() < most && tries < TRIES && !trials.isOver()) {
            tries++;
            var removed = waiting.remove();
            for (var demand : avoiding(removed, sets)) {
                var more = new HashSet<>(removed);
                more.add(demand);
                if (seen.add(more)) {
                    waiting.add(more);
                }
            }
        }
        return new Found(List.copyOf(sets), waiting.isEmpty() && !open.get());
    }

    /** A conflict that uses none of the removed demands: a known one if possible, else a new one, else none. */
    private Set<Demand> avoiding(Set<Demand> removed, List<Set<Demand>> known) {
        var fitting =
                known.stream().filter(set -> Collections.disjoint(set, removed)).findFirst();
        if (fitting.isPresent()) {
            return fitting.get();
        }
        var fresh = within(without(models.all(), removed));
        fresh.ifPresent(known::add);
        return fresh.orElse(Set.of());
    }

    /** The demands less some of them. */
    static List<Demand> without(List<Demand> all, Collection<Demand> some) {
        return all.stream().filter(demand -> !some.contains(demand)).toList();
    }

    /** An irreducible conflict among some demands; empty when they can hold together. */
    Optional<Set<Demand>> within(List<Demand> held) {
        var rows = held.stream().filter(Demand.OfRow.class::isInstance).toList();
        var verdict = trials.prove(models.with(rows).relaxed());
        if (verdict instanceof Impossible impossible) {
            return Optional.of(ordered(shrunk(support(impossible, rows))));
        }
        var possible = rows.size() == held.size() ? Possible.YES : possible(held);
        note(possible);
        return possible == Possible.NO
                ? Optional.of(ordered(irreducible(List.of(), List.of(), held)))
                : Optional.empty();
    }

    /** Whether some demands can hold together; with rules, that they cannot may be the search's own word. */
    Possible possible(Collection<Demand> held) {
        var answer = trials.any(models.with(held));
        if (answer instanceof Search.Found) {
            return Possible.YES;
        }
        return answer instanceof Search.None ? Possible.NO : Possible.OPEN;
    }

    /** Whether it is proved that some demands cannot hold together. */
    boolean isProved(Collection<Demand> held) {
        return trials.least(models.with(held)) instanceof Search.None none && none.proved();
    }

    private Set<Demand> ordered(Collection<Demand> some) {
        var members = new LinkedHashSet<Demand>();
        models.all().stream().filter(some::contains).forEach(members::add);
        return members;
    }

    /** The demands whose rows have a multiplier in a contradiction over them; that of the batch comes first. */
    private List<Demand> support(Impossible proof, List<Demand> held) {
        var rows = rows(held);
        var support = new ArrayList<Demand>();
        for (int i = 0; i < rows.size(); i++) {
            if (proof.multipliers().get(i).signum() != 0 && !models.isBatch(rows.get(i))) {
                support.add(new Demand.OfRow(rows.get(i)));
            }
        }
        return support;
    }

    /** The model's rows that some demands make up, in its order. */
    private List<Integer> rows(List<Demand> held) {
        var rows = new ArrayList<Integer>();
        for (int row = 0; row < compiled.rows().size(); row++) {
            if (models.isBatch(row) || held.contains(new Demand.OfRow(row))) {
                rows.add(row);
            }
        }
        return rows;
    }

    /** Drops rows as long as the rest stays impossible; what remains is irreducible. */
    private List<Demand> shrunk(List<Demand> rows) {
        var kept = new ArrayList<>(rows);
        for (var row : List.copyOf(rows)) {
            if (!kept.contains(row)) {
                continue;
            }
            var without = new ArrayList<>(kept);
            without.remove(row);
            if (prover().prove(linear(without)) instanceof Impossible impossible) {
                kept.retainAll(support(impossible, without));
            }
        }
        return kept;
    }

    /** Cones are told in cuts as they are needed, which the exact simplex alone knows nothing of. */
    private Prover prover() {
        return compiled.cones().isEmpty() ? Prover.EXACT : trials;
    }

    /** Costs stay, because they keep the pivots from wandering among ties. */
    private LinearModel linear(List<Demand> rows) {
        return models.with(rows).relaxed();
    }

    /**
     * The members among some demands, given others that are held anyway. What is open counts as possible, which may
     * leave a member too many, never one too few.
     *
     * @param fresh what was added to those last; while there is none, they are known to hold
     */
    private List<Demand> irreducible(List<Demand> held, List<Demand> fresh, List<Demand> some) {
        if (!fresh.isEmpty() && isImpossible(held)) {
            return List.of();
        }
        if (some.size() == 1) {
            return some;
        }
        var left = some.subList(0, some.size() / 2);
        var right = some.subList(some.size() / 2, some.size());
        var inRight = irreducible(joined(held, left), left, right);
        var inLeft = irreducible(joined(held, inRight), inRight, left);
        return joined(inLeft, inRight);
    }

    private boolean isImpossible(List<Demand> held) {
        var possible = possible(held);
        note(possible);
        return possible == Possible.NO;
    }

    private void note(Possible possible) {
        if (possible == Possible.OPEN) {
            open.set(true);
        }
    }

    private static List<Demand> joined(List<Demand> a, List<Demand> b) {
        return Stream.concat(a.stream(), b.stream()).toList();
    }
}
