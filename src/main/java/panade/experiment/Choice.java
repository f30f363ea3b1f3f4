package panade.experiment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.design.Criterion;
import panade.design.Exchange;
import panade.design.Run;
import panade.domain.trial.TrialSet;
import panade.learn.Form;
import panade.quantity.Decimal;

/**
 * Chooses among candidates: first those that pay, each after the ones before it, then those that tell most of all
 * coefficients together.
 *
 * @param worth what mixings are worth; empty where that is not known
 */
record Choice(Levers levers, TrialSet set, Request request, Optional<Worth> worth) {
    /** Random designs that an exchange begins with. */
    private static final int STARTS = 10;

    /** With more levers a bent form has more terms than anybody mixes. */
    private static final int MOST_BENT = 4;

    /** A candidate and what it was chosen for. */
    record Chosen(List<BigFraction> point, Mixing.Why why) {}

    /**
     * The points to try.
     *
     * @param confirmed points that are tried in any case
     * @param count how many beside those
     */
    List<Chosen> among(List<List<BigFraction>> candidates, List<List<BigFraction>> confirmed, int count) {
        var chosen = new ArrayList<Chosen>();
        worth.ifPresent(known -> paying(known, candidates, confirmed, count)
                .forEach(point -> chosen.add(new Chosen(point, Mixing.Why.GAIN))));
        var standing = new ArrayList<>(confirmed);
        chosen.forEach(each -> standing.add(each.point()));
        telling(candidates, standing, count - chosen.size())
                .forEach(point -> chosen.add(new Chosen(point, Mixing.Why.DESIGN)));
        return chosen;
    }

    private List<List<BigFraction>> paying(
            Worth known, List<List<BigFraction>> candidates, List<List<BigFraction>> confirmed, int count) {
        var tried = new ArrayList<>(confirmed);
        var paying = new ArrayList<List<BigFraction>>();
        while (paying.size() < count) {
            var before = known.of(tried);
            var best = candidates.stream()
                    .max(Comparator.comparing(point -> after(known, tried, point)))
                    .orElseThrow();
            var gain = Decimal.of(after(known, tried, best).subtract(before));
            if (gain.compareTo(request.worthwhile()) < 0) {
                return paying;
            }
            tried.add(best);
            paying.add(best);
        }
        return paying;
    }

    private static BigDecimal after(Worth known, List<List<BigFraction>> tried, List<BigFraction> point) {
        var all = new ArrayList<>(tried);
        all.add(point);
        return known.of(all);
    }

    private List<List<BigFraction>> telling(
            List<List<BigFraction>> candidates, List<List<BigFraction>> standing, int count) {
        if (count <= 0) {
            return List.of();
        }
        var coordinates = new Coordinates(candidates, form(), set);
        var stand = new ArrayList<Run>(coordinates.beliefs());
        var composition = set.brief().composition();
        set.trials()
                .forEach(trial -> levers.at(trial, composition)
                        .ifPresent(point -> stand.add(coordinates.made(point, trial.block()))));
        standing.forEach(point -> stand.add(new Run(coordinates.row(point), BigFraction.ONE)));
        var rows = candidates.stream().map(coordinates::row).toList();
        return new Exchange(rows, stand, new Criterion.Determinant(), true)
                .best(count, STARTS, request.seed()).orElseThrow().stream()
                        .map(candidates::get)
                        .toList();
    }

    /** As bent as any response was found to be. */
    private Form form() {
        boolean bent = request.responses().stream().anyMatch(each -> each.form() != Form.LINEAR);
        return bent && levers.all().size() <= MOST_BENT ? Form.QUADRATIC : Form.LINEAR;
    }
}
