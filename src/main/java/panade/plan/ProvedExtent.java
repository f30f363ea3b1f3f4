package panade.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Prover;
import panade.certify.Verdict.Optimum;
import panade.compile.CompiledBrief;
import panade.compile.Extent;
import panade.model.LinearForm;
import panade.model.Unproved;
import panade.quantity.Decimal;

/** Extents found by exact linear programs, rounded outward for the sake of short numbers. */
record ProvedExtent(CompiledBrief compiled, Prover prover) implements Extent {
    private static final int DIGITS = 6;

    @Override
    public BigFraction least(LinearForm form) {
        return extreme(form, BigFraction.ONE, RoundingMode.FLOOR);
    }

    @Override
    public BigFraction most(LinearForm form) {
        return extreme(form, BigFraction.ONE.negate(), RoundingMode.CEILING);
    }

    private BigFraction extreme(LinearForm form, BigFraction sign, RoundingMode outward) {
        var model = compiled.model().minimising(form.scaled(sign));
        if (!(prover.prove(model) instanceof Optimum optimum)) {
            throw new Unproved("how much of an ingredient there can be could not be proved");
        }
        var value = model.costAt(optimum.point()).multiply(sign);
        return Decimal.of(new BigDecimal(value.getNumerator())
                .divide(new BigDecimal(value.getDenominator()), new MathContext(DIGITS, outward)));
    }
}
