package panade.trial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.pantry.Composition;
import panade.domain.trial.Lever;
import panade.domain.trial.Response;
import panade.domain.trial.Trial;
import panade.domain.trial.Trial.Measurement;
import panade.domain.trial.TrialSet;
import panade.learn.Observation;
import panade.learn.TasterMeans;
import panade.learn.TasterMeans.Score;

/**
 * The trials on which one response was measured, each as one observation: three pieces of one mixing are repeats of the
 * measuring, not of the mixing.
 *
 * @param observations in the order of the trials
 * @param tasters how they scored; empty where nobody tasted
 * @param apart whether tasters have nothing in common, so that their scores count as they are
 */
record ResponseTrials(
        Response response,
        List<Trial> trials,
        List<Observation> observations,
        Optional<TasterMeans> tasters,
        boolean apart) {

    static ResponseTrials of(TrialSet set, Response response) {
        var measured = set.trials().stream()
                .filter(trial -> !figures(trial, response).isEmpty())
                .toList();
        var scores = scores(measured, response);
        var tasters = scores.isEmpty() ? Optional.<TasterMeans>empty() : TasterMeans.of(scores);
        var values = new ArrayList<List<BigFraction>>();
        measured.forEach(trial -> values.add(levers(trial, response, set.brief().composition())));
        var observations = new ArrayList<Observation>();
        for (int i = 0; i < measured.size(); i++) {
            var trial = measured.get(i);
            observations.add(new Observation(
                    values.get(i),
                    tasters.map(found -> found.means().get(trial.id())).orElseGet(() -> mean(figures(trial, response))),
                    tasters.map(found -> found.weights().get(trial.id())).orElse(BigFraction.ONE),
                    group(i, measured, values),
                    trial.block()));
        }
        return new ResponseTrials(response, measured, observations, tasters, !scores.isEmpty() && tasters.isEmpty());
    }

    private static List<Measurement> figures(Trial trial, Response response) {
        return trial.measured().getOrDefault(response.name(), List.of());
    }

    /** The scores by taster; none where a figure has no taster. */
    private static List<Score> scores(List<Trial> trials, Response response) {
        var scores = new ArrayList<Score>();
        for (var trial : trials) {
            for (var figure : figures(trial, response)) {
                if (figure.by().isEmpty()) {
                    return List.of();
                }
                scores.add(new Score(trial.id(), figure.by(), figure.value()));
            }
        }
        return scores;
    }

    private static BigFraction mean(List<Measurement> figures) {
        return figures.stream()
                .map(Measurement::value)
                .reduce(BigFraction.ZERO, BigFraction::add)
                .divide(figures.size());
    }

    static List<BigFraction> levers(Trial trial, Response response, Composition composition) {
        return response.levers().stream()
                .map(lever -> lever.value(trial.weighed(), trial.process(), composition)
                        .orElseThrow())
                .toList();
    }

    /** The first trial that this one repeats, by its document or by having the same levers. */
    private static String group(int trial, List<Trial> trials, List<List<BigFraction>> values) {
        for (int i = 0; i < trial; i++) {
            if (trials.get(i).group().equals(trials.get(trial).group())
                    || values.get(i).equals(values.get(trial))) {
                return group(i, trials, values);
            }
        }
        return trials.get(trial).id();
    }

    /** Levers that are shares of the batch and add up to the same in every trial: what one gains the others lose. */
    Set<Integer> parts() {
        var shares = new HashSet<Integer>();
        for (int i = 0; i < response.levers().size(); i++) {
            if (response.levers().get(i).isShare()) {
                shares.add(i);
            }
        }
        var sums = new HashSet<BigFraction>();
        observations.forEach(each ->
                sums.add(shares.stream().map(i -> each.levers().get(i)).reduce(BigFraction.ZERO, BigFraction::add)));
        return shares.size() > 1 && sums.size() == 1 ? shares : Set.of();
    }

    /** The mean of the trials in each lever. */
    List<BigFraction> middle() {
        var middle = new ArrayList<BigFraction>();
        for (int i = 0; i < response.levers().size(); i++) {
            var sum = BigFraction.ZERO;
            for (var each : observations) {
                sum = sum.add(each.levers().get(i));
            }
            middle.add(sum.divide(observations.size()));
        }
        return middle;
    }

    List<Lever> levers() {
        return response.levers();
    }

    /** How many trials each group of repeats has. */
    Map<String, Long> groups() {
        return observations.stream().collect(Collectors.groupingBy(Observation::group, Collectors.counting()));
    }
}
