package panade.experiment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.design.Run;
import panade.domain.trial.TrialSet;
import panade.learn.Form;
import panade.learn.Term;
import panade.quantity.Decimal;
import panade.quantity.Fractions;

/**
 * Points as rows of the model that trials are chosen for. Levers run from -1 to 1 over the region, to a millionth, so
 * that no unit weighs more than another and fractions stay short; days are columns of their own, the new one too.
 */
final class Coordinates {
    private static final int PLACES = 6;

    /**
     * What is believed of each coefficient, as a part of a trial: so little that it decides only where trials leave it
     * open (DuMouchel and Jones 1994).
     */
    private static final BigFraction BELIEF = BigFraction.of(1, 1000);

    private final List<Term> terms;
    private final List<BigFraction> middles;
    private final List<BigFraction> halves;
    private final List<String> blocks;

    Coordinates(List<List<BigFraction>> candidates, Form form, TrialSet set) {
        int levers = candidates.get(0).size();
        this.middles = new ArrayList<>();
        this.halves = new ArrayList<>();
        for (int i = 0; i < levers; i++) {
            int lever = i;
            var values = candidates.stream().map(point -> point.get(lever)).toList();
            var least = values.stream().reduce(values.get(0), Fractions::min);
            var most = values.stream().reduce(values.get(0), Fractions::max);
            middles.add(least.add(most).divide(2));
            halves.add(most.subtract(least).divide(2));
        }
        this.terms = form.terms(levers, true, IntStream.range(0, levers).boxed().collect(Collectors.toSet()));
        this.blocks = List.copyOf(
                set.trials().stream().map(trial -> trial.block()).collect(Collectors.toCollection(TreeSet::new)));
    }

    int width() {
        return terms.size() + (isBlocked() ? blocks.size() : 0);
    }

    private boolean isBlocked() {
        return blocks.stream().anyMatch(block -> !block.isEmpty());
    }

    /** A mixing that is still to be made. */
    List<BigFraction> row(List<BigFraction> point) {
        return row(point, blocks.size());
    }

    /** A trial that was made on a day. */
    Run made(List<BigFraction> point, String block) {
        return new Run(row(point, blocks.indexOf(block)), BigFraction.ONE);
    }

    /** The first day is what the others are told against. */
    private List<BigFraction> row(List<BigFraction> point, int day) {
        var scaled = new ArrayList<BigFraction>();
        for (int i = 0; i < point.size(); i++) {
            scaled.add(
                    halves.get(i).signum() == 0
                            ? BigFraction.ZERO
                            : Decimal.of(Decimal.round(
                                    point.get(i).subtract(middles.get(i)).divide(halves.get(i)), PLACES)));
        }
        var row = new ArrayList<BigFraction>();
        terms.forEach(term -> row.add(term.at(scaled)));
        for (int i = 1; isBlocked() && i <= blocks.size(); i++) {
            row.add(i == day ? BigFraction.ONE : BigFraction.ZERO);
        }
        return row;
    }

    /** What is believed before any trial. */
    List<Run> beliefs() {
        return IntStream.range(0, width())
                .mapToObj(column -> {
                    var row = new ArrayList<>(Collections.nCopies(width(), BigFraction.ZERO));
                    row.set(column, BigFraction.ONE);
                    return new Run(row, BELIEF);
                })
                .toList();
    }
}
