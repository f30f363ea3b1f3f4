package panade.learn;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Chooses how far a response bends: as little as the checks allow. */
public final class FormChoice {
    /** More levers than this make more products than a cook has trials. */
    public static final int MOST_LEVERS = 4;

    private static final BigDecimal LEVEL = new BigDecimal("0.05");
    private static final BigFraction WORTHWHILE = BigFraction.of(9, 10);

    private final int levers;
    private final boolean constant;
    private final Set<Integer> squared;
    private final Set<Integer> leftOut;
    private final List<Observation> observations;

    /**
     * A choice among the forms over these levers.
     *
     * @param leftOut levers that no term may have
     */
    public FormChoice(
            int levers, boolean constant, Set<Integer> squared, Set<Integer> leftOut, List<Observation> observations) {
        this.levers = levers;
        this.constant = constant;
        this.squared = Set.copyOf(squared);
        this.leftOut = Set.copyOf(leftOut);
        this.observations = List.copyOf(observations);
    }

    /**
     * The linear form, unless repeats reject it at 5 % or the next one predicts left-out observations better by more
     * than a tenth; and so on.
     */
    public Form form() {
        var form = Form.LINEAR;
        while (levers - leftOut.size() <= MOST_LEVERS
                && form.next().isPresent()
                && isBetter(fit(form), fit(form.next().get()))) {
            form = form.next().get();
        }
        return form;
    }

    /** The terms of a form over the levers that are not left out. */
    public List<Term> terms(Form form) {
        return form.terms(levers, constant, squared).stream()
                .filter(term -> Collections.disjoint(term.levers(), leftOut))
                .toList();
    }

    private Estimate fit(Form form) {
        var terms = terms(form);
        return Fit.of(terms, observations, Prior.none(terms.size()));
    }

    private boolean isBetter(Estimate simple, Estimate bent) {
        if (!(simple instanceof Fit plain) || !(bent instanceof Fit further)) {
            return false;
        }
        var press = further.press();
        if (press.isEmpty() || further.degrees() < 1 || further.terms().equals(plain.terms())) {
            return false;
        }
        boolean rejected = LackOfFit.of(plain, LackOfFit.PureError.of(observations))
                .filter(test -> test.isRejectedAt(LEVEL))
                .isPresent();
        return rejected || predictsBetter(press.get(), plain);
    }

    private static boolean predictsBetter(BigFraction press, Fit plain) {
        return plain.press()
                .filter(other -> press.compareTo(other.multiply(WORTHWHILE)) < 0)
                .isPresent();
    }
}
