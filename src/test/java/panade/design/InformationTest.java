package panade.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import panade.learn.Fit;
import panade.learn.Form;
import panade.learn.Observation;
import panade.learn.Prior;
import panade.learn.Term;
import panade.testing.RepeatableSeeds;

/** Determinants and variances of designs: theorems, published figures, and fits by other arithmetic. */
class InformationTest {
    static final List<Term> QUADRATIC_OF_3 = Form.QUADRATIC.terms(3, false, Set.of());
    private static final List<Term> QUADRATIC_OF_4 = Form.QUADRATIC.terms(4, false, Set.of());

    /**
     * Kiefer, Annals of Mathematical Statistics 32 (1961): the {3,2} lattice is D-optimal for the quadratic model (from
     * memory), so that no mixture is predicted with more than as many variances as there are terms, over all trials.
     */
    @Test
    void the_lattice_of_three_components() {
        var lattice = told(QUADRATIC_OF_3, Points.grid(3, 2));
        assertThat(lattice.determinant()).isEqualTo(BigFraction.of(1, 4096));
        for (var point : Points.grid(3, 12)) {
            assertThat(variance(lattice, QUADRATIC_OF_3, point).multiply(6)).isLessThanOrEqualTo(BigFraction.of(6));
        }
        assertThat(variance(lattice, QUADRATIC_OF_3, Points.point("1/2 0 1/2"))).isEqualTo(BigFraction.ONE);
        assertThat(lattice.meanVariance(Moments.overSimplex(3, QUADRATIC_OF_3)).multiply(6))
                .isEqualTo(BigFraction.of(19, 5));
    }

    @Test
    void the_lattice_of_four_components() {
        var lattice = told(QUADRATIC_OF_4, Points.grid(4, 2));
        assertThat(lattice.determinant()).isEqualTo(BigFraction.of(1, 1 << 24));
        assertThat(perTrial(lattice, 10, 10)).isCloseTo(0.0189464571, within(5e-11));
        assertThat(lattice.meanVariance(Moments.overSimplex(4, QUADRATIC_OF_4)).multiply(10))
                .isEqualTo(BigFraction.of(36, 7));
    }

    /** Wheeler, AlgDesign (R package), vignette, "Mixture designs": eight trials of the {3,3} grid. */
    @Test
    void a_published_design_of_eight_trials() {
        var design = Stream.of(
                        "1 0 0", "2/3 1/3 0", "0 1 0", "2/3 0 1/3", "0 2/3 1/3", "1/3 0 2/3", "0 1/3 2/3", "0 0 1")
                .map(Points::point)
                .toList();
        var told = told(QUADRATIC_OF_3, design);
        assertThat(perTrial(told, 8, 6)).isCloseTo(0.03623366, within(5e-9));
        var coefficients = new Moments(
                IntStream.range(0, 6).mapToObj(i -> Points.axis(6, i)).toList());
        var mean = told.meanVariance(coefficients).multiply(8).divide(6);
        assertThat(mean.doubleValue()).isCloseTo(98.34085, within(5e-6));
    }

    /**
     * I-optimal weights of corners, middles of edges and the centroid (Goos, Jones and Syafitri, Journal of the
     * American Statistical Association 111, 2016, have the same support, from memory; weights by a multiplicative
     * algorithm in R). By the theorem of equivalence no mixture tells more of the mean variance than all together.
     */
    @Test
    void weights_that_predict_best_on_the_average() {
        var points = new ArrayList<>(Points.grid(3, 2));
        points.add(Points.point("1/3 1/3 1/3"));
        var runs = points.stream()
                .map(point -> new Run(Run.at(QUADRATIC_OF_3, point).row(), weight(point)))
                .toList();
        var all = runs.stream().map(Run::weight).reduce(BigFraction.ZERO, BigFraction::add);
        var region = Moments.overSimplex(3, QUADRATIC_OF_3);
        var told = Information.of(runs).orElseThrow();
        var mean = told.meanVariance(region).multiply(all);
        assertThat(mean.doubleValue()).isCloseTo(3.24061142, within(5e-8));
        var more = BigFraction.of(1, 1_000_000);
        for (var point : Points.grid(3, 12)) {
            var nudged = new ArrayList<>(runs);
            nudged.add(new Run(Run.at(QUADRATIC_OF_3, point).row(), more));
            var after =
                    Information.of(nudged).orElseThrow().meanVariance(region).multiply(all.add(more));
            assertThat(after.doubleValue()).isGreaterThan(mean.doubleValue() - 1e-9);
        }
    }

    private static BigFraction weight(List<BigFraction> point) {
        long some = point.stream().filter(share -> share.signum() > 0).count();
        return Points.point(List.of("0.10016", "0.20155", "0.09485").get((int) some - 1))
                .get(0);
    }

    /** Dirichlet's integrals, from memory. */
    @Test
    void means_over_all_mixtures() {
        var moments = Moments.overSimplex(3, QUADRATIC_OF_3).means();
        assertThat(moments.get(0).get(0)).isEqualTo(BigFraction.of(1, 6));
        assertThat(moments.get(0).get(1)).isEqualTo(BigFraction.of(1, 12));
        assertThat(moments.get(3).get(3)).isEqualTo(BigFraction.of(1, 90));
        assertThat(Moments.overSimplex(3, List.of(Term.of(), Term.of(0))).means())
                .isEqualTo(List.of(
                        List.of(BigFraction.ONE, BigFraction.of(1, 3)),
                        List.of(BigFraction.of(1, 3), BigFraction.of(1, 6))));
    }

    /** Against fits, which sweep instead: determinants, and variances where nothing was tried. */
    @Test
    void what_is_told_is_what_a_fit_comes_to() {
        var random = new Random(RepeatableSeeds.seed("what_is_told"));
        for (int round = 0; round < 30; round++) {
            var points = draws(random, 8);
            var told = told(QUADRATIC_OF_3, points);
            var fit = (Fit) Fit.of(
                    QUADRATIC_OF_3,
                    points.stream()
                            .map(point -> Observation.of(point, BigFraction.ONE))
                            .toList(),
                    Prior.none(6));
            assertThat(told.determinant()).isEqualTo(fit.determinant());
            var elsewhere = draws(random, 5);
            elsewhere.forEach(point -> assertThat(variance(told, QUADRATIC_OF_3, point))
                    .isEqualTo(fit.at(point).form()));
            var mean = elsewhere.stream()
                    .map(point -> fit.at(point).form())
                    .reduce(BigFraction.ZERO, BigFraction::add)
                    .divide(5);
            var rows = elsewhere.stream()
                    .map(point -> Run.at(QUADRATIC_OF_3, point).row())
                    .toList();
            assertThat(told.meanVariance(Moments.over(rows))).isEqualTo(mean);
        }
    }

    /** One more trial multiplies the determinant by one and its variance; a belief counts as a trial does. */
    @Test
    void one_more_trial_and_what_was_believed() {
        var runs = new ArrayList<Run>();
        for (int term = 0; term < 6; term++) {
            runs.add(Run.belief(6, term, BigFraction.of(term + 1, 10)));
        }
        var believed = Information.of(runs).orElseThrow();
        assertThat(believed.determinant()).isEqualTo(BigFraction.of(720, 1_000_000));
        var trial = Run.at(QUADRATIC_OF_3, Points.point("0.2 0.3 0.5"));
        runs.add(trial);
        var after = Information.of(runs).orElseThrow();
        assertThat(after.determinant().divide(believed.determinant()))
                .isEqualTo(believed.variance(trial.row()).add(1));
    }

    @Test
    void a_coefficient_that_is_left_open_is_told() {
        var edge = Collections.nCopies(9, Run.at(QUADRATIC_OF_3, Points.point("1/2 1/2 0")));
        assertThat(Information.of(edge)).isEmpty();
    }

    private static List<List<BigFraction>> draws(Random random, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> random.ints(3, 1, 50)
                        .mapToObj(n -> BigFraction.of(n, 100))
                        .toList())
                .toList();
    }

    private static BigFraction variance(Information told, List<Term> terms, List<BigFraction> point) {
        return told.variance(Run.at(terms, point).row());
    }

    static double perTrial(Information told, int trials, int terms) {
        return Math.pow(told.determinant().doubleValue(), 1.0 / terms) / trials;
    }

    private static Information told(List<Term> terms, List<List<BigFraction>> points) {
        return Information.of(points.stream().map(point -> Run.at(terms, point)).toList())
                .orElseThrow();
    }
}
