package panade.learn;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Fractions;

/**
 * A linear model fitted by least squares, or from what was believed before. A belief counts as observations do, so that
 * both are one piece of arithmetic, exact in fractions.
 */
public final class Fit implements Estimate {
    private final Design design;
    private final Sweep sweep;
    private final int degrees;
    private final BigFraction sse;
    private final List<Residual> residuals;

    private Fit(Design design, Sweep sweep, int degrees, BigFraction sse) {
        this.design = design;
        this.sweep = sweep;
        this.degrees = degrees;
        this.sse = sse;
        this.residuals = residuals(design, sweep);
    }

    /** Fits a model to observations. */
    public static Estimate of(List<Term> terms, List<Observation> observations, Prior prior) {
        var design = Design.of(terms, observations);
        var rows = new ArrayList<List<BigFraction>>();
        var weights = new ArrayList<BigFraction>();
        observations.forEach(each -> {
            var row = design.row(each);
            row.add(each.response());
            rows.add(row);
            weights.add(each.weight());
        });
        addBeliefs(prior, design.width(), rows, weights);
        var sweep = Sweep.of(rows, weights, design.width() + 1);
        if (!sweep.dependent().isEmpty()) {
            return new NotSeparable(sweep.dependent().stream()
                    .filter(column -> column < terms.size())
                    .toList());
        }
        int free = prior.flat() + design.width() - terms.size();
        return new Fit(
                design,
                sweep,
                prior.degrees() + observations.size() - free,
                sweep.residual().add(prior.variance().multiply(prior.degrees())));
    }

    /** A belief is an observation of the coefficient alone, of its own weight. */
    private static void addBeliefs(Prior prior, int width, List<List<BigFraction>> rows, List<BigFraction> weights) {
        for (int i = 0; i < prior.means().size(); i++) {
            if (prior.precisions().get(i).signum() != 0) {
                var row = new ArrayList<>(Collections.nCopies(width, BigFraction.ZERO));
                row.set(i, BigFraction.ONE);
                row.add(prior.means().get(i));
                rows.add(row);
                weights.add(prior.precisions().get(i));
            }
        }
    }

    public List<Term> terms() {
        return design.terms();
    }

    public List<Observation> observations() {
        return design.observations();
    }

    /** What the blocks are called whose common levels were taken out; one where there was nothing to take out. */
    public List<String> blocks() {
        return design.blocks();
    }

    public BigFraction coefficient(int term) {
        return sweep.coefficient(term);
    }

    /** By how much a block lies above the mean of the blocks. */
    public BigFraction blockEffect(int block) {
        int first = terms().size();
        if (block < blocks().size() - 1) {
            return sweep.coefficient(first + block);
        }
        var others = BigFraction.ZERO;
        for (int i = 0; i < blocks().size() - 1; i++) {
            others = others.add(sweep.coefficient(first + i));
        }
        return others.negate();
    }

    /** Degrees of freedom left for the error. */
    public int degrees() {
        return degrees;
    }

    /** The sum of squares left over, with what was believed of the error. */
    public BigFraction sse() {
        return sse;
    }

    /** The error's variance; empty where no degree of freedom is left for it. */
    public Optional<BigFraction> variance() {
        return degrees > 0 ? Optional.of(sse.divide(degrees)) : Optional.empty();
    }

    private List<BigFraction> unit(int term) {
        var row = new ArrayList<>(Collections.nCopies(design.width(), BigFraction.ZERO));
        row.set(term, BigFraction.ONE);
        return row;
    }

    /** The covariance of two coefficients, in variances of the error. */
    public BigFraction covariance(int one, int other) {
        var both = sweep.form(sum(unit(one), unit(other)));
        return both.subtract(sweep.form(unit(one)))
                .subtract(sweep.form(unit(other)))
                .divide(2);
    }

    /** A coefficient's variance. */
    public Optional<BigFraction> variance(int term) {
        return variance().map(variance -> variance.multiply(sweep.form(unit(term))));
    }

    /** The determinant of the sums of squares and products of the terms. */
    public BigFraction determinant() {
        return sweep.determinant();
    }

    /** What is predicted where the levers have these values, in a block like the mean of them. */
    public Prediction at(List<BigFraction> levers) {
        return predicted(design.row(levers));
    }

    /**
     * What would be predicted somewhere if more usual trials came out as predicted: the same mean, known better.
     * Nothing more is assumed of the error than is known of it now.
     *
     * @param tried the levers of each of those trials
     */
    public Prediction after(List<List<BigFraction>> tried, List<BigFraction> levers) {
        var rows = new ArrayList<List<BigFraction>>();
        rows.add(design.row(levers));
        tried.forEach(each -> rows.add(design.row(each)));
        var shared = shared(rows);
        for (int trial = rows.size() - 1; trial > 0; trial--) {
            tell(shared, trial);
        }
        return new Prediction(at(levers).mean(), shared[0][0], variance().orElse(null), degrees);
    }

    /** Takes what a trial tells out of the covariances of those before it. */
    private static void tell(BigFraction[][] shared, int trial) {
        var whole = shared[trial][trial].add(BigFraction.ONE);
        for (int i = 0; i < trial; i++) {
            for (int j = 0; j <= i; j++) {
                var told = shared[trial][i].multiply(shared[trial][j]).divide(whole);
                shared[i][j] = shared[i][j].subtract(told);
            }
        }
    }

    /** The covariances of predictions, in variances of the error; those above the diagonal are the same. */
    private BigFraction[][] shared(List<List<BigFraction>> rows) {
        var forms = rows.stream().map(sweep::form).toList();
        var shared = new BigFraction[rows.size()][];
        for (int i = 0; i < shared.length; i++) {
            shared[i] = new BigFraction[i + 1];
            for (int j = 0; j <= i; j++) {
                var both = i == j ? forms.get(i).multiply(4) : sweep.form(sum(rows.get(i), rows.get(j)));
                shared[i][j] =
                        both.subtract(forms.get(i)).subtract(forms.get(j)).divide(2);
            }
        }
        return shared;
    }

    private static List<BigFraction> sum(List<BigFraction> one, List<BigFraction> other) {
        var sum = new ArrayList<BigFraction>();
        for (int i = 0; i < one.size(); i++) {
            sum.add(one.get(i).add(other.get(i)));
        }
        return sum;
    }

    /** How fast the response grows along a direction, from a point. */
    public Prediction slope(List<BigFraction> point, List<BigFraction> direction) {
        var row = new ArrayList<>(Collections.nCopies(design.width(), BigFraction.ZERO));
        for (int i = 0; i < terms().size(); i++) {
            row.set(i, terms().get(i).slope(point, direction));
        }
        return predicted(row);
    }

    private Prediction predicted(List<BigFraction> row) {
        return new Prediction(sweep.fitted(row), sweep.form(row), variance().orElse(null), degrees);
    }

    /** Each observation with what the fit makes of it. */
    public List<Residual> residuals() {
        return residuals;
    }

    private static List<Residual> residuals(Design design, Sweep sweep) {
        return design.observations().stream()
                .map(each -> {
                    var row = design.row(each);
                    return new Residual(
                            each,
                            each.response().subtract(sweep.fitted(row)),
                            sweep.form(row).multiply(each.weight()));
                })
                .toList();
    }

    /** The largest leverage of an observation. */
    public BigFraction mostLeverage() {
        return residuals().stream().map(Residual::leverage).reduce(BigFraction.ZERO, Fractions::max);
    }

    /**
     * Sum of squares of what each observation is off when it is predicted from the others, to some fifty digits; empty
     * if one cannot be.
     */
    public Optional<BigFraction> press() {
        return residuals.stream().anyMatch(Residual::isAlone)
                ? Optional.empty()
                : Optional.of(
                        residuals.stream().map(Residual::squareWithout).reduce(BigFraction.ZERO, BigFraction::add));
    }
}
