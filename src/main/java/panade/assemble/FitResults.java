package panade.assemble;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.origin.Remark;
import panade.learn.Distributions;
import panade.learn.Fit;
import panade.learn.Prediction;
import panade.learn.Prediction.Of;
import panade.quantity.Decimal;
import panade.result.trial.FitResult;
import panade.result.trial.FitResult.PredictionResult;
import panade.result.trial.FittedResult;
import panade.result.trial.FittedResult.LeverResult;
import panade.result.trial.FittedResult.Middle;
import panade.result.trial.FittedResult.Residual;
import panade.result.trial.FittedResult.Taster;
import panade.result.trial.FittedResult.TermResult;
import panade.trial.FittedResponse;
import panade.trial.LeverEffect;
import panade.trial.PredictedFormula;

/** Makes the result of {@code fit}. */
public final class FitResults {
    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    private final FittedResponse fitted;

    private FitResults(FittedResponse fitted) {
        this.fitted = fitted;
    }

    /** What trials teach, and what they predict of formulas. */
    public static FitResult of(
            String title,
            BigFraction sure,
            List<FittedResponse> responses,
            List<PredictedFormula> at,
            List<Remark> remarks) {
        return new FitResult(
                sure,
                responses.stream().map(each -> new FitResults(each).result()).toList(),
                at.stream().map(each -> predicted(each, sure)).toList(),
                RemarkLines.of(remarks),
                title);
    }

    private FittedResult result() {
        var fit = fitted.fit();
        var variation = fitted.variation();
        return new FittedResult(
                fitted.response().name(),
                fitted.response().unit(),
                fitted.form().words(),
                fitted.chosen(),
                fitted.constant(),
                fitted.trials(),
                fit.map(this::terms).orElse(List.of()),
                fit.map(FitResults::residual).orElse(null),
                new FittedResult.PureError(
                        fitted.pureError().degrees(), fitted.pureError().ss()),
                fitted.lackOfFit()
                        .map(test -> new FittedResult.LackOfFit(
                                test.degrees(), test.ss(), test.f(), test.p().round(DIGITS)))
                        .orElse(null),
                fit.flatMap(Fit::press).orElse(null),
                variation.flatMap(each -> each.r2()).orElse(null),
                variation.flatMap(each -> each.predictedR2()).orElse(null),
                variation.map(each -> each.aboutMean() ? "mean" : "zero").orElse(null),
                fit.map(each -> new FittedResult.Leverage(each.mostLeverage())).orElse(null),
                fitted.coverage()
                        .map(each -> new FittedResult.Coverage(each.sure(), each.held(), each.of()))
                        .orElse(null),
                fitted.effects().stream().map(this::lever).toList(),
                fitted.atMiddle().map(this::middle).orElse(null),
                tasters(),
                fitted.remarks());
    }

    private List<TermResult> terms(Fit fit) {
        var levers = fitted.response().levers();
        return IntStream.range(0, fit.terms().size())
                .mapToObj(i -> new TermResult(
                        fit.terms().get(i).levers().stream()
                                .map(lever -> levers.get(lever).name())
                                .toList(),
                        fit.coefficient(i),
                        root(fit.variance(i))))
                .toList();
    }

    private static Residual residual(Fit fit) {
        return new Residual(fit.degrees(), root(fit.variance()), fit.sse());
    }

    private static @Nullable BigDecimal root(Optional<BigFraction> variance) {
        return variance.map(Distributions::root).map(root -> root.round(DIGITS)).orElse(null);
    }

    private LeverResult lever(LeverEffect effect) {
        var unit = effect.lever().unit();
        var slope = effect.slope();
        var step = slope == null ? null : handy(unit.fromBase(effect.to()).subtract(unit.fromBase(effect.from())));
        var base = step == null ? BigFraction.ZERO : step.multiply(unit.factor());
        return new LeverResult(
                effect.lever().name(),
                unit.symbol(),
                unit.fromBase(effect.from()),
                unit.fromBase(effect.to()),
                step,
                slope == null ? null : slope.mean().multiply(base),
                slope == null
                        ? null
                        : slope.around(fitted.sure(), Of.MEAN)
                                .map(around -> around.multiply(
                                                base.bigDecimalValue(DIGITS.getPrecision(), DIGITS.getRoundingMode()))
                                        .round(DIGITS))
                                .orElse(null),
                effect.replacing());
    }

    /** One, two or five times a power of ten: the largest that goes four times or more into a range. */
    private static BigFraction handy(BigFraction range) {
        var step = Decimal.of(BigDecimal.ONE.scaleByPowerOfTen(40));
        var most = range.divide(4);
        for (int i = 0; step.compareTo(most) > 0; i++) {
            step = i % 3 == 1 ? step.multiply(2).divide(5) : step.divide(2);
        }
        return step;
    }

    private Middle middle(Prediction at) {
        var around = at.around(fitted.sure(), Of.BATCH);
        return new Middle(
                at.mean(),
                around.map(each -> end(at, each.negate())).orElse(null),
                around.map(each -> end(at, each)).orElse(null));
    }

    private static BigDecimal end(Prediction at, BigDecimal off) {
        return at.mean().bigDecimalValue(24, RoundingMode.HALF_EVEN).add(off).round(DIGITS);
    }

    private List<Taster> tasters() {
        return fitted.tasters()
                .map(each -> each.levels().entrySet().stream()
                        .map(level -> new Taster(level.getKey(), level.getValue()))
                        .toList())
                .orElse(List.of());
    }

    private static PredictionResult predicted(PredictedFormula formula, BigFraction sure) {
        var at = formula.at();
        var around = at.around(sure, Of.BATCH);
        return new PredictionResult(
                formula.formula(),
                formula.response().response().name(),
                at.mean(),
                at.standardError(Of.MEAN).map(error -> error.round(DIGITS)).orElse(null),
                around.map(each -> end(at, each.negate())).orElse(null),
                around.map(each -> end(at, each)).orElse(null),
                formula.outside().stream().map(each -> each.lever().name()).toList(),
                formula.response().response().unit());
    }
}
