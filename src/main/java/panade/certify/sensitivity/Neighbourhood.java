package panade.certify.sensitivity;

import java.util.HashSet;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.certify.Certificate;
import panade.certify.Certifier;
import panade.certify.Verdict;
import panade.certify.simplex.ExactSimplex;
import panade.certify.simplex.ExactSimplex.Ending;
import panade.certify.simplex.Integers;
import panade.certify.simplex.Tableau;
import panade.model.Basis;
import panade.model.LinearForm;
import panade.model.LinearModel;
import panade.model.LinearModel.Row;
import panade.model.LinearModel.Sense;
import panade.model.Unproved;
import panade.quantity.Decimal;

/**
 * All points that meet a model's rows and cost at most a little more than its optimum. Each extreme is found by a
 * search in binary floating point, or by exact pivots where that is lost, and proved by its own multipliers.
 */
public final class Neighbourhood {
    private static final int CEILING_DIGITS = 12;

    private final LinearModel model;
    private final List<BigFraction> optimum;
    private final Basis start;
    private final WalkedOptima walked;
    /** Made when a search fails. */
    private @Nullable Tableau tableau;

    /**
     * The neighbourhood of an optimum.
     *
     * @param slack how much dearer a point may be, as a fraction of the least cost
     */
    public Neighbourhood(Verdict.Optimum optimum, BigFraction slack) {
        this(
                optimum,
                new Row(
                        "cost",
                        optimum.model().costs(),
                        Sense.AT_MOST,
                        ceiling(optimum.model().costAt(optimum.point()), slack)));
    }

    /**
     * The neighbourhood of an optimum that costs nothing, where a form is allowed to cost something more.
     *
     * @param form by column, what more is allowed for
     * @param each how much for each unit of it
     */
    public Neighbourhood(Verdict.Optimum optimum, LinearForm form, BigFraction each) {
        this(
                optimum,
                new Row("cost", optimum.model().costs().minus(form.scaled(each)), Sense.AT_MOST, BigFraction.ZERO));
    }

    private Neighbourhood(Verdict.Optimum optimum, Row cost) {
        this.model = optimum.model().with(cost);
        this.optimum = optimum.point();
        this.start = with(optimum.basis(), model.rows().size() - 1);
        this.walked = new WalkedOptima(model, start);
    }

    private Tableau tableau() {
        if (tableau == null) {
            tableau = new Tableau(model);
            tableau.bringIn(start);
            if (new ExactSimplex(tableau).run() != Ending.OPTIMAL) {
                throw new IllegalStateException("the optimum is not in its own neighbourhood");
            }
        }
        return tableau;
    }

    /**
     * The ceiling on cost. With any slack at all it is cut to {@value #CEILING_DIGITS} digits, never below the least
     * cost: a ceiling of a hundred digits would slow every pivot and change nothing that anybody can see.
     */
    private static BigFraction ceiling(BigFraction least, BigFraction slack) {
        var exact = least.add(least.abs().multiply(slack));
        var cut = Decimal.of(Decimal.significant(exact, CEILING_DIGITS));
        return slack.signum() > 0 && cut.compareTo(least) > 0 ? cut : exact;
    }

    private static Basis with(Basis basis, int row) {
        var rows = new HashSet<>(basis.rows());
        rows.add(row);
        return new Basis(basis.columns(), rows);
    }

    /** A proved extreme of a form. */
    public record Extreme(BigFraction value, List<BigFraction> point) {}

    /** The least of a linear form over the columns. */
    public Extreme least(LinearForm form) {
        return isNothing(form) ? new Extreme(BigFraction.ZERO, optimum) : extreme(form, false);
    }

    /** Whether a form is zero at the optimum and can be nowhere below: that is the least then. */
    private boolean isNothing(LinearForm form) {
        return form.values().stream().allMatch(value -> value.signum() > 0)
                && form.dot(optimum).signum() == 0;
    }

    /** The most of a linear form over the columns; blends are bounded, so there is one. */
    public Extreme most(LinearForm form) {
        return extreme(form, true);
    }

    private Extreme extreme(LinearForm form, boolean most) {
        var weights = (most ? form.negated() : form).dense(model.columns().size());
        var question = model.withCosts(weights);
        var point = walked.point(weights).orElseGet(() -> pivoted(question, weights));
        var value = question.costAt(point);
        return new Extreme(most ? value.negate() : value, point);
    }

    private List<BigFraction> pivoted(LinearModel question, List<BigFraction> weights) {
        var pivots = tableau();
        var scale = Integers.scaleOf(weights);
        pivots.setObjective(Integers.whole(weights, scale));
        if (new ExactSimplex(pivots).run() != Ending.OPTIMAL) {
            throw new Unproved("a form has no end in the neighbourhood");
        }
        var point = pivots.point();
        if (!Certificate.provesOptimal(question, point, Certifier.multipliers(question, pivots, scale))) {
            throw new Unproved("an extreme of the neighbourhood could not be proved");
        }
        return point;
    }
}
