package panade.compile;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.compile.CompiledBrief.Source;
import panade.domain.Brief;
import panade.domain.Measure;
import panade.domain.Sureness;
import panade.domain.Sureness.Estimated;
import panade.domain.VaryingValue;
import panade.model.Cone.Part;
import panade.model.LinearForm;

/** How uncertain what a bound counts is, as squares of forms that make up its variance. */
record SpreadForms(Brief brief, List<Source> columns) {

    /** The squares, each times the square of the quantile. */
    List<Part> of(Measure measure, Sureness sure) {
        var scale = sure.quantile().multiply(sure.quantile());
        if (scale.signum() == 0) {
            return List.of();
        }
        var estimated = sure.estimated();
        return estimated == null ? ofContents(measure, scale) : ofTrials(estimated, scale);
    }

    /** A square for each value that varies: what one standard deviation of it does to the measure. */
    private List<Part> ofContents(Measure measure, BigFraction scale) {
        var parts = new ArrayList<Part>();
        for (var value : VaryingValue.of(brief)) {
            var form = LinearForm.over(
                    columns.size(), j -> value.gain(measure, columns.get(j).use(), brief.composition()));
            add(scale, form, parts);
        }
        return parts;
    }

    /** The covariance of the coefficients as a sum of squares, pivot by pivot (Cholesky without roots). */
    private List<Part> ofTrials(Estimated estimated, BigFraction scale) {
        var forms = estimated.terms().stream().map(this::form).toList();
        var left = estimated.covariance();
        var parts = new ArrayList<Part>();
        for (int k = 0; k < forms.size(); k++) {
            var pivot = left.get(k).get(k);
            if (pivot.signum() > 0) {
                var column = left.get(k);
                var form = LinearForm.ZERO;
                for (int i = k; i < forms.size(); i++) {
                    form = form.plus(forms.get(i).scaled(column.get(i).divide(pivot)));
                }
                add(scale.multiply(pivot), form, parts);
                left = without(left, k);
            }
        }
        var error = estimated.error();
        if (error != null) {
            add(scale.multiply(error), LinearForm.sumOver(columns.size(), j -> true), parts);
        }
        return parts;
    }

    /** What is left of a symmetric matrix without the square that a pivot and its column make. */
    private static List<List<BigFraction>> without(List<List<BigFraction>> matrix, int pivot) {
        var column = matrix.get(pivot);
        var rest = new ArrayList<List<BigFraction>>();
        for (int i = 0; i < matrix.size(); i++) {
            var factor = column.get(i).divide(column.get(pivot));
            var row = new ArrayList<BigFraction>();
            for (int j = 0; j < matrix.size(); j++) {
                row.add(matrix.get(i).get(j).subtract(factor.multiply(column.get(j))));
            }
            rest.add(row);
        }
        return rest;
    }

    private LinearForm form(Measure measure) {
        return LinearForm.over(columns.size(), j -> measure.perKg(columns.get(j).use(), brief.composition()));
    }

    private static void add(BigFraction weight, LinearForm form, List<Part> parts) {
        if (weight.signum() > 0 && !form.isZero()) {
            parts.add(new Part(weight, form));
        }
    }
}
