package panade.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.learn.Term;

/**
 * The mean of each product of two terms over a region, by which the mean variance of a prediction there is found.
 *
 * @param means a row for each term
 */
public record Moments(List<List<BigFraction>> means) {
    /** Over points that count alike. */
    public static Moments over(List<List<BigFraction>> rows) {
        int width = rows.get(0).size();
        var means = new ArrayList<List<BigFraction>>();
        for (int i = 0; i < width; i++) {
            var line = new ArrayList<>(Collections.nCopies(width, BigFraction.ZERO));
            for (var row : rows) {
                for (int j = 0; j < width; j++) {
                    line.set(j, line.get(j).add(row.get(i).multiply(row.get(j))));
                }
            }
            line.replaceAll(sum -> sum.divide(rows.size()));
            means.add(List.copyOf(line));
        }
        return new Moments(List.copyOf(means));
    }

    /** Over all mixtures of as many components, evenly. */
    public static Moments overSimplex(int components, List<Term> terms) {
        return new Moments(terms.stream()
                .map(one -> terms.stream()
                        .map(other -> simplexMean(components, one, other))
                        .toList())
                .toList());
    }

    /** Dirichlet's integral: (q-1)! a1! ... aq! / (q-1+a1+...+aq)! for powers a1 to aq of q shares. */
    private static BigFraction simplexMean(int components, Term one, Term other) {
        var powers = new int[components];
        var mean = BigFraction.ONE;
        int all = components - 1;
        for (var term : List.of(one, other)) {
            for (int lever : term.levers()) {
                powers[lever]++;
                all++;
                mean = mean.multiply(powers[lever]).divide(all);
            }
        }
        return mean;
    }
}
