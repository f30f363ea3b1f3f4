package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.result.BriefResult.Status;

/**
 * One product under several price lists.
 *
 * @param lists the names of the lists
 * @param best what there is under each
 * @param labels what switching from the first list's blend to each list's own does to the label; null where one is
 *     missing
 * @param costOf money per kilogram of the best blend of list i (row) at the prices of list j; null when there is no
 *     such blend or it cannot be made there
 * @param regret the single blend whose worst excess over each list's least cost is least; null when some list has no
 *     blend, or no one blend can be made under all
 * @param average the single blend that is cheapest on average; null likewise
 * @param pooled what there is when every list may be bought from
 * @param remarks on the brief under any of the lists
 * @param title the product's
 * @param currency empty where none is stated
 * @param lacking what each list does not sell
 */
public record QuotesResult(
        List<String> lists,
        List<BriefResult> best,
        List<@Nullable LabelChangeResult> labels,
        List<List<@Nullable BigFraction>> costOf,
        @Nullable OneBlend regret,
        @Nullable OneBlend average,
        BriefResult pooled,
        List<RemarkLine> remarks,
        @JsonIgnore String title,
        @JsonIgnore String currency,
        @JsonIgnore List<Lacking> lacking) {
    public QuotesResult {
        lists = List.copyOf(lists);
        best = List.copyOf(best);
        remarks = List.copyOf(remarks);
        lacking = List.copyOf(lacking);
    }

    /** Whether every blend found is proved to be the cheapest of its list, whatever choice rules leave. */
    public boolean allProved() {
        return Stream.concat(best.stream(), Stream.of(pooled))
                .allMatch(outcome -> outcome.fold(
                        found -> found.certificate().choice() == null
                                || found.certificate().choice().proved(),
                        none -> true,
                        open -> true));
    }

    /** One blend for all lists, or why it is not known. */
    public sealed interface OneBlend {}

    /** A blend that can be made under every list; who sells is left open, because that differs from list to list. */
    public sealed interface Single extends OneBlend {
        /** Its cost per kilogram under each list. */
        List<BigFraction> costs();

        /** Its lines. */
        List<ShareLine> blend();
    }

    /**
     * The blend with the least regret.
     *
     * @param worstPerKg money per kilogram that it costs above the best of a list, at worst
     */
    public record Safest(BigFraction worstPerKg, List<BigFraction> costs, List<ShareLine> blend) implements Single {
        public Safest {
            costs = List.copyOf(costs);
            blend = List.copyOf(blend);
        }
    }

    /**
     * The blend that is cheapest on average.
     *
     * @param perKg its average cost
     */
    public record CheapestOnAverage(BigFraction perKg, List<BigFraction> costs, List<ShareLine> blend)
            implements Single {
        public CheapestOnAverage {
            costs = List.copyOf(costs);
            blend = List.copyOf(blend);
        }
    }

    /** Nothing could be proved of it. */
    public record Unknown(Status status, String reason) implements OneBlend {}

    /**
     * Names of ingredients that a list does not sell.
     *
     * @param ofPooled that the cheapest blend of all lists takes
     * @param ofFirst that the first list's blend takes
     */
    public record Lacking(List<String> ofPooled, List<String> ofFirst) {
        public Lacking {
            ofPooled = List.copyOf(ofPooled);
            ofFirst = List.copyOf(ofFirst);
        }
    }
}
