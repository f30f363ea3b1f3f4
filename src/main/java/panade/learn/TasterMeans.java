package panade.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What trials come to for tasters who each have a level of their own: score = trial + taster + error.
 *
 * @param means of the trials, as the average taster would score them
 * @param weights of the trials: how many scores they have, over the mean number of scores
 * @param levels of the tasters, above the average taster
 */
public record TasterMeans(
        Map<String, BigFraction> means, Map<String, BigFraction> weights, Map<String, BigFraction> levels) {
    /** A taster's score of a trial. */
    public record Score(String trial, String taster, BigFraction value) {}

    /** The means; empty where tasters cannot be told from trials, as where two groups tasted nothing in common. */
    public static Optional<TasterMeans> of(List<Score> scores) {
        var trials = scores.stream().map(Score::trial).distinct().toList();
        var observations = scores.stream()
                .map(score -> new Observation(
                        indicators(trials, score.trial()),
                        score.value(),
                        BigFraction.ONE,
                        score.trial(),
                        score.taster()))
                .toList();
        var terms = Form.LINEAR.terms(trials.size(), false, Set.of());
        return Fit.of(terms, observations, Prior.none(terms.size())) instanceof Fit fit
                ? Optional.of(of(trials, scores, fit))
                : Optional.empty();
    }

    private static List<BigFraction> indicators(List<String> trials, String trial) {
        var row = new ArrayList<BigFraction>();
        trials.forEach(each -> row.add(each.equals(trial) ? BigFraction.ONE : BigFraction.ZERO));
        return row;
    }

    private static TasterMeans of(List<String> trials, List<Score> scores, Fit fit) {
        var means = new LinkedHashMap<String, BigFraction>();
        var weights = new LinkedHashMap<String, BigFraction>();
        for (int i = 0; i < trials.size(); i++) {
            var trial = trials.get(i);
            long count =
                    scores.stream().filter(score -> score.trial().equals(trial)).count();
            means.put(trial, fit.coefficient(i));
            weights.put(trial, BigFraction.of(count).multiply(trials.size()).divide(scores.size()));
        }
        var levels = new LinkedHashMap<String, BigFraction>();
        for (int i = 0; i < fit.blocks().size(); i++) {
            levels.put(fit.blocks().get(i), fit.blockEffect(i));
        }
        return new TasterMeans(means, weights, levels);
    }
}
