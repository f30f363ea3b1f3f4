package panade.compile;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.CompiledBrief.Source;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.VaryingValue;
import panade.model.Cone.Part;
import panade.model.LinearForm;

/**
 * How a measure of the batch varies with what its ingredients hold: a form for each value that varies says what one
 * standard deviation of it does to the measure.
 */
record SpreadForms(Brief brief, List<Source> columns) {

    /** The squares that make up the variance of a measure, each times the square of a quantile. */
    List<Part> of(Measure measure, BigFraction quantile) {
        var parts = new ArrayList<Part>();
        var weight = quantile.multiply(quantile);
        for (var value : VaryingValue.of(brief)) {
            var form = LinearForm.over(
                    columns.size(), j -> value.gain(measure, columns.get(j).use(), brief.composition()));
            if (!form.isZero() && weight.signum() > 0) {
                parts.add(new Part(weight, form));
            }
        }
        return parts;
    }
}
