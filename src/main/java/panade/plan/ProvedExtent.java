package panade.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.certify.Prover;
import panade.certify.Verdict.Optimum;
import panade.compile.CompiledBrief;
import panade.compile.Extent;
import panade.model.Unproved;
import panade.quantity.Decimal;

/** Extents found by exact linear programs, rounded outward for the sake of short numbers. */
record ProvedExtent(CompiledBrief compiled, Prover prover) implements Extent {
    private static final int DIGITS = 6;

    @Override
    public BigFraction least(Map<Integer, BigFraction> form) {
        return extreme(form, BigFraction.ONE, RoundingMode.FLOOR);
    }

    @Override
    public BigFraction most(Map<Integer, BigFraction> form) {
        return extreme(form, BigFraction.ONE.negate(), RoundingMode.CEILING);
    }

    private BigFraction extreme(Map<Integer, BigFraction> form, BigFraction sign, RoundingMode outward) {
        var costs = new ArrayList<BigFraction>();
        for (int j = 0; j < compiled.columns().size(); j++) {
            costs.add(form.getOrDefault(j, BigFraction.ZERO).multiply(sign));
        }
        var model = compiled.model().withCosts(costs);
        if (!(prover.prove(model) instanceof Optimum optimum)) {
            throw new Unproved("how much of an ingredient there can be could not be proved");
        }
        var value = model.costAt(optimum.point()).multiply(sign);
        return Decimal.of(new BigDecimal(value.getNumerator())
                .divide(new BigDecimal(value.getDenominator()), new MathContext(DIGITS, outward)));
    }
}
