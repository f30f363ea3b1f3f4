package panade.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.learn.Estimate.NotSeparable;
import panade.learn.Fit;
import panade.learn.FormChoice;
import panade.learn.Residual;
import panade.learn.Term;
import panade.quantity.Decimal;

/** Says what trials do not tell of a response, and which of them to repeat. */
final class FitRemarks {
    private static final BigDecimal LEVEL = new BigDecimal("0.05");
    private static final BigFraction RARE = BigFraction.of(5, 100);
    private static final int FEW_REPEATS = 3;

    /** Squared correlation from which two levers are hardly told apart; common practice, no source. */
    private static final BigFraction TOGETHER = BigFraction.of(81, 100);

    /** Scales off what the others predict from which a trial is told. */
    private static final BigFraction FAR = BigFraction.of(25, 10);

    private final FittedResponse fitted;
    private final ResponseTrials trials;
    private final List<String> sentences = new ArrayList<>();

    FitRemarks(FittedResponse fitted, ResponseTrials trials) {
        this.fitted = fitted;
        this.trials = trials;
    }

    List<String> sentences() {
        if (trials.observations().isEmpty()) {
            return List.of("No trial measured it.");
        }
        tellStill();
        if (fitted.estimate() instanceof NotSeparable aliased) {
            tellNotSeparable(aliased);
        }
        fitted.fit().ifPresent(this::tellFit);
        if (trials.apart()) {
            sentences.add("No two trials share enough tasters to tell the trials from the tasters, so each trial"
                    + " counts as the mean of its own scores. Let one taster score all of them.");
        }
        return sentences;
    }

    private void tellStill() {
        fitted.effects().stream()
                .filter(effect -> !effect.isMoved())
                .forEach(effect -> sentences.add("\"" + effect.lever().name()
                        + "\" was the same in every trial, so nothing is known of what it does."));
    }

    private void tellNotSeparable(NotSeparable aliased) {
        var terms =
                aliased.terms().stream().map(i -> words(fitted.terms().get(i))).collect(Collectors.joining(", "));
        sentences.add(
                aliased.terms().isEmpty()
                        ? "The days or blocks cannot be told from the levers. Mix one trial again on another day."
                        : "The trials cannot tell " + terms + " from the rest: in all of them it can be worked out from"
                                + " the other levers" + (fitted.constant() ? " and the level that all share" : "")
                                + ". Mix one in which it alone is different.");
    }

    private String words(Term term) {
        return term.levers().isEmpty()
                ? "the level that all trials share"
                : term.levers().stream()
                        .map(i -> "\"" + fitted.response().levers().get(i).name() + "\"")
                        .collect(Collectors.joining(" x "));
    }

    private void tellFit(Fit fit) {
        if (fit.degrees() == 0) {
            sentences.add("There are as many trials as figures to find, so nothing is left over to say how sure they"
                    + " are. Mix at least three more.");
            return;
        }
        tellRepeats(fit);
        tellLackOfFit();
        tellAlone(fit);
        tellCoverage();
        tellTogether();
        tellFarOff(fit);
        tellBlocks(fit);
    }

    private void tellRepeats(Fit fit) {
        int repeats = fitted.pureError().degrees();
        if (repeats < FEW_REPEATS) {
            var count = repeats == 0 ? "No mixing was repeated" : "Mixings were repeated only " + times(repeats);
            sentences.add(count + ", so it cannot be told well whether the form fits. Mix " + mostLeverage(fit)
                    + " again: what is found hangs on it more than on any other that was mixed once.");
        }
    }

    private static String times(int count) {
        return count == 1 ? "once" : "twice";
    }

    private String mostLeverage(Fit fit) {
        var residuals = fit.residuals();
        var groups = trials.groups();
        var single = IntStream.range(0, residuals.size())
                .boxed()
                .filter(i -> groups.getOrDefault(residuals.get(i).observation().group(), 0L) == 1L)
                .max(Comparator.comparing(i -> residuals.get(i).leverage()));
        return single.map(i -> trials.trials().get(i).id()).orElse("one of them");
    }

    private void tellLackOfFit() {
        fitted.lackOfFit().filter(test -> test.isRejectedAt(LEVEL)).ifPresent(test -> {
            boolean many = fitted.response().levers().size() > FormChoice.MOST_LEVERS;
            var advice = fitted.form().next().isEmpty()
                    ? "Look for a figure that was misread, or something that changed and is no lever yet."
                    : fitted.chosen() && many
                            ? "With fewer levers a bent form could be tried."
                            : "Look for a figure that was misread, or try the form \""
                                    + fitted.form().next().get().words() + "\".";
            sentences.add("The " + fitted.form().words()
                    + " form misses the trials by more than repeats of one mixing differ: chance alone would do that"
                    + " in fewer than 5 of 100 (" + percent(test.p()) + "). Do not trust its bounds. " + advice);
        });
    }

    private static String percent(BigDecimal share) {
        return Decimal.significant(Decimal.of(share.movePointRight(2)), 2).toPlainString() + " %";
    }

    private void tellAlone(Fit fit) {
        var residuals = fit.residuals();
        var alone = IntStream.range(0, residuals.size())
                .filter(i -> residuals.get(i).isAlone())
                .mapToObj(i -> trials.trials().get(i).id())
                .toList();
        if (!alone.isEmpty()) {
            sentences.add("Nothing checks " + String.join(", ", alone)
                    + ": the fit goes exactly through, so it cannot be predicted from the others. Mix "
                    + (alone.size() == 1 ? "it" : "one of them") + " again.");
        }
    }

    private void tellCoverage() {
        fitted.coverage()
                .filter(coverage -> coverage.chanceOfNoMore().compareTo(RARE) < 0)
                .ifPresent(coverage -> sentences.add("Only " + coverage.held() + " of " + coverage.of()
                        + " trials lie above the bound that the others would have set for them; chance alone leaves so"
                        + " few in fewer than 5 of 100. Its bounds promise too much."));
    }

    private void tellTogether() {
        var levers = fitted.response().levers();
        for (int i = 0; i < levers.size(); i++) {
            for (int j = i + 1; j < levers.size(); j++) {
                if (correlation(i, j)
                        .filter(square -> square.compareTo(TOGETHER) > 0)
                        .isPresent()) {
                    sentences.add("\"" + levers.get(i).name() + "\" and \""
                            + levers.get(j).name()
                            + "\" nearly always changed together: trust what is predicted, not what each does alone.");
                }
            }
        }
    }

    /** The square of the correlation of two levers over the trials; empty where one of them stood still. */
    private Optional<BigFraction> correlation(int i, int j) {
        var xx = products(i, i);
        var yy = products(j, j);
        var xy = products(i, j);
        return xx.signum() == 0 || yy.signum() == 0
                ? Optional.empty()
                : Optional.of(xy.multiply(xy).divide(xx.multiply(yy)));
    }

    private BigFraction products(int i, int j) {
        var sum = BigFraction.ZERO;
        for (var each : trials.observations()) {
            var x = each.levers().get(i).subtract(fitted.middle().get(i));
            sum = sum.add(
                    x.multiply(each.levers().get(j).subtract(fitted.middle().get(j))));
        }
        return sum;
    }

    private void tellFarOff(Fit fit) {
        var residuals = fit.residuals();
        for (int i = 0; i < residuals.size() && fit.degrees() > 1; i++) {
            if (!residuals.get(i).isAlone() && isFarOff(residuals.get(i), fit)) {
                sentences.add("\"" + trials.trials().get(i).id()
                        + "\" is far from what the others predict (more than 2.5 times what one batch is usually off)."
                        + " Look at its weights and figures, or mix it again.");
            }
        }
    }

    private static boolean isFarOff(Residual residual, Fit fit) {
        return residual.studentizedSquare(fit).compareTo(FAR.multiply(FAR)) > 0;
    }

    private void tellBlocks(Fit fit) {
        if (fit.blocks().size() > 1) {
            int last = fit.blocks().size() - 1;
            var order = IntStream.rangeClosed(0, last)
                    .boxed()
                    .sorted(Comparator.comparing(fit::blockEffect))
                    .toList();
            int low = order.get(0);
            int high = order.get(last);
            var apart = fit.blockEffect(high).subtract(fit.blockEffect(low));
            var unit = fitted.response().unit();
            sentences.add("\"" + fit.blocks().get(high) + "\" lay "
                    + Decimal.significant(apart, 3).toPlainString()
                    + (unit.isEmpty() ? "" : unit.equals("%") ? " points" : " " + unit)
                    + " above \"" + fit.blocks().get(low)
                    + "\". What is predicted is for the mean of such blocks: the next may lie as far off, and ranges do"
                    + " not count that.");
        }
    }
}
