package panade.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.trial.Response;
import panade.domain.trial.TrialSet;
import panade.learn.Estimate;
import panade.learn.Fit;
import panade.learn.FormChoice;
import panade.learn.LackOfFit.PureError;
import panade.learn.Prediction;
import panade.learn.Prior;
import panade.quantity.Fractions;

/** Fits the responses of trials. */
public final class Fitting {
    private final ResponseTrials trials;
    private final BigFraction sure;
    private final Set<Integer> parts;

    private Fitting(ResponseTrials trials, BigFraction sure) {
        this.trials = trials;
        this.sure = sure;
        this.parts = trials.parts();
    }

    /**
     * What trials teach of each of their responses.
     *
     * @param sure how sure bounds are to be, a half or more
     */
    public static List<FittedResponse> of(TrialSet set, BigFraction sure) {
        return set.responses().stream().map(each -> of(set, each, sure)).toList();
    }

    /** What trials teach of one response. */
    static FittedResponse of(TrialSet set, Response response, BigFraction sure) {
        return new Fitting(ResponseTrials.of(set, response), sure).fitted();
    }

    private FittedResponse fitted() {
        var response = trials.response();
        var stated = response.constant();
        boolean constant = stated == null ? parts.isEmpty() : stated;
        var squared = squared();
        var observations = trials.observations();
        int levers = response.levers().size();
        var middle = observations.isEmpty() ? List.<BigFraction>of() : trials.middle();
        var still = constant ? still(middle) : Set.<Integer>of();
        var choice = new FormChoice(levers, constant, squared, still, observations);
        var form = response.form() != null ? response.form() : choice.form();
        var terms = choice.terms(form);
        var estimate = Fit.of(terms, observations, Prior.none(terms.size()));
        var effects = effects(estimate, middle);
        var pure = PureError.of(observations);
        var fitted = new FittedResponse(
                response,
                observations.size(),
                form,
                response.form() == null,
                constant,
                terms,
                estimate,
                pure,
                sure,
                effects,
                middle,
                trials.tasters(),
                List.of());
        return remarking(fitted);
    }

    private FittedResponse remarking(FittedResponse fitted) {
        return new FittedResponse(
                fitted.response(),
                fitted.trials(),
                fitted.form(),
                fitted.chosen(),
                fitted.constant(),
                fitted.terms(),
                fitted.estimate(),
                fitted.pureError(),
                fitted.sure(),
                fitted.effects(),
                fitted.middle(),
                fitted.tasters(),
                new FitRemarks(fitted, trials).sentences());
    }

    /** Levers that were the same in every trial: what they do is part of the constant. */
    private Set<Integer> still(List<BigFraction> middle) {
        var still = new HashSet<Integer>();
        for (int i = 0; i < middle.size(); i++) {
            int lever = i;
            if (trials.observations().stream()
                    .allMatch(each -> each.levers().get(lever).equals(middle.get(lever)))) {
                still.add(i);
            }
        }
        return still;
    }

    private Set<Integer> squared() {
        var squared = new HashSet<Integer>();
        for (int i = 0; i < trials.levers().size(); i++) {
            if (!parts.contains(i)) {
                squared.add(i);
            }
        }
        return squared;
    }

    private List<LeverEffect> effects(Estimate estimate, List<BigFraction> middle) {
        var effects = new ArrayList<LeverEffect>();
        for (int i = 0; i < middle.size(); i++) {
            int lever = i;
            var seen = trials.observations().stream()
                    .map(each -> each.levers().get(lever))
                    .toList();
            var from = seen.stream().reduce(seen.get(0), Fractions::min);
            var to = seen.stream().reduce(seen.get(0), Fractions::max);
            var slope = from.equals(to) ? null : slope(estimate, middle, i);
            effects.add(new LeverEffect(trials.levers().get(i), from, to, slope, parts.contains(i)));
        }
        return effects;
    }

    private @Nullable Prediction slope(Estimate estimate, List<BigFraction> middle, int lever) {
        return estimate instanceof Fit fit ? fit.slope(middle, direction(middle, lever)) : null;
    }

    /** One more of a lever; where the levers are the parts of a whole, the others give way in proportion (Cox 1971). */
    private List<BigFraction> direction(List<BigFraction> middle, int lever) {
        var direction = new ArrayList<>(Collections.nCopies(middle.size(), BigFraction.ZERO));
        direction.set(lever, BigFraction.ONE);
        var others = BigFraction.ZERO;
        for (int part : parts) {
            others = part == lever ? others : others.add(middle.get(part));
        }
        for (int part : parts) {
            if (part != lever && parts.contains(lever) && others.signum() != 0) {
                direction.set(part, middle.get(part).divide(others).negate());
            }
        }
        return direction;
    }
}
