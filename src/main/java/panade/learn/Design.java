package panade.learn;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The rows of a model: its terms, then a contrast for each block but the last, so that effects of blocks add to nought.
 */
record Design(List<Term> terms, List<Observation> observations, List<String> blocks) {
    static Design of(List<Term> terms, List<Observation> observations) {
        return new Design(
                terms,
                observations,
                observations.stream()
                        .map(Observation::block)
                        .distinct()
                        .sorted()
                        .toList());
    }

    int width() {
        return terms.size() + Math.max(0, blocks.size() - 1);
    }

    /** A row where no block is favoured. */
    List<BigFraction> row(List<BigFraction> levers) {
        var row = new ArrayList<BigFraction>();
        terms.forEach(term -> row.add(term.at(levers)));
        while (row.size() < width()) {
            row.add(BigFraction.ZERO);
        }
        return row;
    }

    List<BigFraction> row(Observation observation) {
        var row = new ArrayList<BigFraction>();
        terms.forEach(term -> row.add(term.at(observation.levers())));
        row.addAll(contrasts(observation));
        return row;
    }

    /** The row of a saturated model, in which each group of repeats has a level of its own. */
    List<BigFraction> groupRow(Observation observation, List<String> groups) {
        var row = new ArrayList<BigFraction>();
        groups.forEach(group -> row.add(group.equals(observation.group()) ? BigFraction.ONE : BigFraction.ZERO));
        row.addAll(contrasts(observation));
        row.add(observation.response());
        return row;
    }

    private List<BigFraction> contrasts(Observation observation) {
        int block = blocks.indexOf(observation.block());
        var contrasts = new ArrayList<BigFraction>();
        for (int i = 0; i < blocks.size() - 1; i++) {
            boolean last = block == blocks.size() - 1;
            contrasts.add(last ? BigFraction.ONE.negate() : i == block ? BigFraction.ONE : BigFraction.ZERO);
        }
        return contrasts;
    }
}
