package panade.result.trial;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.RemarkLine;

/**
 * What it costs to be more or less sure of one bound.
 *
 * @param of the bound
 * @param points by rising sureness
 * @param remarks on the brief
 * @param title the product's
 * @param currency empty where none is stated
 */
public record SureCurveResult(
        SureBound of,
        List<Point> points,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String currency) {
    public SureCurveResult {
        points = List.copyOf(points);
        remarks = List.copyOf(remarks);
    }

    /**
     * The bound.
     *
     * @param path JSON Pointer into {@code file}
     * @param asks its numbers as written
     * @param both whether it has a floor and a ceiling
     */
    public record SureBound(
            String name,
            String path,
            String file,
            String unit,
            @JsonIgnore String asks,
            @JsonIgnore boolean both) {}

    /**
     * The cheapest blend at one sureness.
     *
     * @param sure the probability
     * @param asked whether the brief asks for just that
     * @param costPerKg within a millionth; null where there is no blend, or nothing was proved
     * @param dearerPerKg than where only the mean keeps the bound; null likewise
     * @param value of the bound on average; null likewise
     * @param undecided why nothing was proved; null elsewhere
     */
    public record Point(
            BigFraction sure,
            boolean asked,
            @Nullable BigFraction costPerKg,
            @Nullable BigFraction dearerPerKg,
            @Nullable BigFraction value,
            @JsonInclude(Include.NON_NULL) @Nullable String undecided) {}
}
