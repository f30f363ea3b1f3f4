package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * What happens when ingredients are out.
 *
 * @param out ids of what is out, other lots included
 * @param before the best blend with it
 * @param after what there is without it
 * @param standIns each candidate that could do one of its jobs, tried alone, the cheapest first
 * @param allergens what the swap does to them; null where there is no blend
 * @param label what the swap does to it; null where there is no blend
 * @param remarks on the documents
 * @param outNames names of what is out
 * @param changes what else the swap changes; null where there is no blend
 */
public record SwapResult(
        List<String> out,
        BlendResult before,
        BriefResult after,
        List<StandIn> standIns,
        @JsonInclude(Include.NON_NULL) @Nullable AllergenChange allergens,
        @JsonInclude(Include.NON_NULL) @Nullable LabelChangeResult label,
        List<RemarkLine> remarks,
        @JsonIgnore List<String> outNames,
        @JsonIgnore @Nullable Changes changes) {
    public SwapResult {
        out = List.copyOf(out);
        standIns = List.copyOf(standIns);
        remarks = List.copyOf(remarks);
        outNames = List.copyOf(outNames);
    }

    /** One stand-in on its own: others of the missing one's kinds that are new to the blend are left out too. */
    public sealed interface StandIn {
        /** What each of the three cases comes to. */
        default <R> R fold(Function<Works, R> works, Function<Fails, R> fails, Function<Open, R> open) {
            if (this instanceof Works blend) {
                return works.apply(blend);
            }
            return this instanceof Fails none ? fails.apply(none) : open.apply((Open) this);
        }
    }

    /**
     * A stand-in with which there is a blend.
     *
     * @param share how much of it the blend takes; zero when the rest make up without it
     * @param costPerKg the least cost with it
     * @param changePerKg how much more that is than with what is out
     * @param statement names on the label, in order
     * @param name of the stand-in
     */
    public record Works(
            String ingredient,
            BigFraction share,
            BigFraction costPerKg,
            BigFraction changePerKg,
            AllergenChange allergens,
            List<String> statement,
            @JsonIgnore String name)
            implements StandIn {
        public Works {
            statement = List.copyOf(statement);
        }
    }

    /**
     * A stand-in with which there is no blend.
     *
     * @param fails the number that would have to give; null when no single one would do
     */
    public record Fails(
            String ingredient,
            @Nullable Failure fails,
            @JsonIgnore String name) implements StandIn {}

    /**
     * A stand-in with which neither a blend nor its impossibility is proved.
     *
     * @param undecided why not
     */
    public record Open(
            String ingredient, String undecided, @JsonIgnore String name) implements StandIn {}

    /**
     * A number that would have to give.
     *
     * @param file where it is written; null where it is written nowhere
     * @param name of its bound
     * @param reaches how far blends come
     * @param needs the number as it stands
     */
    public record Failure(
            String path,
            @JsonInclude(Include.NON_NULL) @Nullable String file,
            String name,
            BigFraction reaches,
            BigFraction needs,
            String unit) {}

    /**
     * Allergens as the ingredient set states them.
     *
     * @param added stated of the new blend alone
     * @param removed stated of the old blend alone
     * @param notKnown names of ingredients new with the swap for which nobody says
     */
    public record AllergenChange(List<String> added, List<String> removed, List<String> notKnown) {
        public AllergenChange {
            added = List.copyOf(added);
            removed = List.copyOf(removed);
            notKnown = List.copyOf(notKnown);
        }
    }

    /**
     * What is different in the best blend without what is out.
     *
     * @param amounts of ingredients that change, by id
     * @param newlyBinding titles of bounds that bind and did not before
     * @param allergens stated of the new blend
     * @param allergensNotKnown names of its ingredients for which nobody says
     * @param statement names on its label, in order
     */
    public record Changes(
            List<Amount> amounts,
            List<String> newlyBinding,
            List<String> allergens,
            List<String> allergensNotKnown,
            List<String> statement) {
        public Changes {
            amounts = List.copyOf(amounts);
            newlyBinding = List.copyOf(newlyBinding);
            allergens = List.copyOf(allergens);
            allergensNotKnown = List.copyOf(allergensNotKnown);
            statement = List.copyOf(statement);
        }
    }

    /** Kilograms of an ingredient, by its name, in the batch. */
    public record Amount(String name, BigFraction before, BigFraction after) {}
}
