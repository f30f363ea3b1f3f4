package panade.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Measure;
import panade.domain.Measure.Part;
import panade.domain.Sureness.Estimated;
import panade.domain.trial.Lever;
import panade.learn.Fit;
import panade.quantity.Unit;

/**
 * A response that trials taught as something that a bound can count: a measure of the batch, and how well it is known.
 *
 * @param mean what is to be expected of a batch
 * @param estimated how well that is known
 * @param settled settings of the process that it stands at: the middle of the trials
 */
public record LearnedForm(Measure mean, Estimated estimated, List<LeverEffect> settled) {

    /** Why no bound can follow what was learned, in words that go on from "the response"; empty where one can. */
    public static Optional<String> objection(FittedResponse response) {
        var fit = response.fit();
        if (fit.isEmpty()) {
            return Optional.of(
                    "has too few trials: the " + response.trials() + " there are cannot tell its levers apart");
        }
        if (fit.get().variance().isEmpty()) {
            return Optional.of(
                    "has too few trials: the " + response.trials() + " there are leave nothing to tell the error by");
        }
        if (response.terms().stream().anyMatch(term -> term.levers().size() > 1)) {
            return Optional.of(
                    "bends over its levers (" + response.form().words() + "), which no bound can follow yet");
        }
        return response.effects().stream()
                .map(LeverEffect::lever)
                .filter(Lever.OfRatio.class::isInstance)
                .findFirst()
                .map(lever -> "follows a ratio, the lever \"" + lever.name() + "\", which no bound can follow yet");
    }

    /**
     * The form of a response to which there is no objection.
     *
     * @param ingredients everything that can be in a batch
     * @param unit that the response is told in
     * @param batch whether a single batch is meant, not the mean of many
     */
    public static LearnedForm of(FittedResponse response, Collection<String> ingredients, Unit unit, boolean batch) {
        var fit = response.fit().orElseThrow();
        var terms = response.terms().stream()
                .map(term -> term.levers().isEmpty()
                        ? whole(ingredients, BigFraction.ONE)
                        : measure(response, term.levers().get(0), ingredients))
                .toList();
        var parts = new ArrayList<Part>();
        for (int i = 0; i < terms.size(); i++) {
            parts.addAll(scaled(terms.get(i), fit.coefficient(i)));
        }
        var settled = response.effects().stream()
                .filter(effect -> effect.lever() instanceof Lever.OfProcess)
                .toList();
        return new LearnedForm(
                new Measure(response.response().name(), unit, List.copyOf(parts)),
                new Estimated(
                        terms, covariance(fit, terms.size()), error(fit, batch), fit.degrees(), response.trials()),
                settled);
    }

    private static @Nullable BigFraction error(Fit fit, boolean batch) {
        return batch ? fit.variance().orElseThrow() : null;
    }

    private static List<List<BigFraction>> covariance(Fit fit, int terms) {
        var error = fit.variance().orElseThrow();
        var all = new ArrayList<List<BigFraction>>();
        for (int i = 0; i < terms; i++) {
            var row = new ArrayList<BigFraction>();
            for (int j = 0; j < terms; j++) {
                row.add(fit.covariance(i, j).multiply(error));
            }
            all.add(row);
        }
        return all;
    }

    /** A lever as a measure of the batch; a setting of the process is the same whatever goes in. */
    private static Measure measure(FittedResponse response, int lever, Collection<String> ingredients) {
        return response.effects().get(lever).lever() instanceof Lever.OfBlend blend
                ? blend.measure()
                : whole(ingredients, response.middle().get(lever));
    }

    /** So much for each kilogram of batch. */
    private static Measure whole(Collection<String> ingredients, BigFraction each) {
        var weights = new HashMap<String, BigFraction>();
        ingredients.forEach(id -> weights.put(id, each));
        return new Measure("batch", Unit.PERCENT, List.of(new Part(Map.of(), Map.copyOf(weights), null)));
    }

    private static List<Part> scaled(Measure measure, BigFraction factor) {
        return measure.parts().stream()
                .map(part -> {
                    var weights = new HashMap<String, BigFraction>();
                    part.ingredients().forEach((id, weight) -> weights.put(id, weight.multiply(factor)));
                    return new Part(part.properties(), Map.copyOf(weights), part.stage());
                })
                .toList();
    }
}
