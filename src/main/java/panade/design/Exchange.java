package panade.design;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Fractions;

/**
 * Chooses trials among candidates by exchange: as long as any trial can be replaced by a candidate to advantage, the
 * pair of most advantage is exchanged (Fedorov 1972). That ends where no single exchange helps, so the best of several
 * random starts is taken; it is good, not proved to be best. All in whole numbers, so that no advantage is an artefact
 * of rounding.
 */
public final class Exchange {
    private final List<Run> candidates;
    private final List<Run> made;
    private final Criterion criterion;
    private final boolean repeats;
    private final Information.Scales scales;
    private final List<BigInteger[]> rows;

    /**
     * A choice to be made.
     *
     * @param candidates the rows of trials that may be chosen
     * @param made trials that stand, and what is believed before any of them
     * @param repeats whether a candidate may be chosen more than once
     */
    public Exchange(List<List<BigFraction>> candidates, List<Run> made, Criterion criterion, boolean repeats) {
        this.candidates = candidates.stream().map(Run::usual).toList();
        this.made = List.copyOf(made);
        this.criterion = criterion;
        this.repeats = repeats;
        this.scales = Information.Scales.of(
                Stream.concat(this.candidates.stream(), made.stream()).toList());
        this.rows = this.candidates.stream().map(scales::row).toList();
    }

    /**
     * The trials to make beside those that stand, by their place among the candidates, in ascending order.
     *
     * @param trials how many
     * @param starts random designs to begin with, one at least
     * @return empty where so many trials leave a coefficient open, or there are not so many candidates
     */
    public Optional<List<Integer>> best(int trials, int starts, long seed) {
        var random = new Random(seed);
        return IntStream.range(0, starts)
                .mapToObj(start -> begun(trials, random))
                .flatMap(Optional::stream)
                .map(this::exchanged)
                .max(Comparator.comparing(Chosen::merit))
                .map(best -> best.places().stream().sorted().toList());
    }

    /** What a choice would tell, with what stands. */
    public Optional<Information> information(List<Integer> places) {
        return Information.of(
                scales,
                Stream.concat(made.stream(), places.stream().map(candidates::get))
                        .toList());
    }

    /** Candidates in random order, first those that tell something new of the coefficients. */
    private Optional<Chosen> begun(int trials, Random random) {
        var order =
                new ArrayList<>(IntStream.range(0, candidates.size()).boxed().toList());
        Collections.shuffle(order, random);
        var told = new Independent();
        made.forEach(run -> told.keep(run.row()));
        var places = new ArrayList<>(order.stream()
                .filter(place -> told.keep(candidates.get(place).row()))
                .limit(trials)
                .toList());
        order.removeAll(places);
        while (places.size() < trials && (repeats || !order.isEmpty())) {
            places.add(repeats ? Integer.valueOf(random.nextInt(candidates.size())) : order.remove(0));
        }
        if (places.size() < trials) {
            return Optional.empty();
        }
        return information(places).map(information -> new Chosen(places, information, criterion));
    }

    private Chosen exchanged(Chosen start) {
        var chosen = start;
        while (true) {
            var swap = bestSwap(chosen);
            if (swap.isEmpty()) {
                return chosen;
            }
            chosen = swapped(chosen, swap.get());
        }
    }

    private Chosen swapped(Chosen chosen, Swap swap) {
        var places = new ArrayList<>(chosen.places());
        int out = places.set(swap.out(), swap.in());
        var information = chosen.information()
                .with(rows.get(swap.in()), scales.weight())
                .with(rows.get(out), scales.weight().negate());
        return new Chosen(places, information, criterion);
    }

    private Optional<Swap> bestSwap(Chosen chosen) {
        var merits = SwapMerits.of(chosen.information(), rows, scales, criterion);
        var best = Optional.<Swap>empty();
        var most = BigFraction.ZERO;
        for (int out = 0; out < chosen.places().size(); out++) {
            for (int in = 0; in < rows.size(); in++) {
                if (repeats || !chosen.places().contains(in)) {
                    var merit = merits.of(chosen.places().get(out), in);
                    best = merit.compareTo(most) > 0 ? Optional.of(new Swap(out, in)) : best;
                    most = Fractions.max(most, merit);
                }
            }
        }
        return best;
    }

    private record Swap(int out, int in) {}

    /** A choice and what it tells. */
    private record Chosen(List<Integer> places, Information information, Criterion criterion) {
        BigFraction merit() {
            return criterion.merit(information);
        }
    }
}
