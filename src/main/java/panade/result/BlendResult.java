package panade.result;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonInclude.Include;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.lazy.Lazy;

/**
 * A certified least-cost blend with its reasons.
 *
 * @param unique whether no other blend costs as little
 * @param blend what goes in, stage by stage, heaviest first
 * @param bounds every bound, ceiling and availability, in the brief's order
 * @param unused candidates that are not in the blend, by id
 * @param properties what the blend holds
 * @param prices how far the prices of what is in the blend may move, by id
 * @param room how far each candidate's share may be varied, by id
 * @param propertyRoom the same of each property that is known of every candidate
 * @param alternatives clearly different blends for at most {@code slack} more
 * @param fullCost null when the brief states nothing beside the ingredients
 * @param ladder what fewer names on the label cost; null when not asked for
 * @param sameLabel what a printed label costs; null when none is kept
 * @param remarks on the documents; null where this is a part of a larger result
 * @param brief what was asked
 * @param nearest of the unused, those that are nearest to coming in
 * @param slack how much more a blend may cost to count as nearby, as a part of the least cost
 * @param money what each ingredient takes of the money over all stages, dearest first
 * @param allergens what the blend carries
 */
public record BlendResult(
        Status status,
        Lazy<Boolean> unique,
        Cost cost,
        List<BlendLine> blend,
        Lazy<List<BoundResult>> bounds,
        Lazy<List<UnusedIngredient>> unused,
        List<PropertyValue> properties,
        Lazy<List<PriceRange>> prices,
        List<IngredientRoom> room,
        List<PropertyRoom> propertyRoom,
        List<Alternative> alternatives,
        Certificate certificate,
        @JsonInclude(Include.NON_NULL) @Nullable FullCostResult fullCost,
        @JsonInclude(Include.NON_NULL) @Nullable List<Rung> ladder,
        @JsonInclude(Include.NON_NULL) @Nullable LabelPrice sameLabel,
        @JsonInclude(Include.NON_NULL) @Nullable List<RemarkLine> remarks,
        @JsonIgnore BriefFacts brief,
        @JsonIgnore Lazy<NearestUnused> nearest,
        @JsonIgnore BigFraction slack,
        @JsonIgnore List<IngredientCost> money,
        @JsonIgnore Allergens allergens)
        implements BriefResult {
    public BlendResult {
        blend = List.copyOf(blend);
        properties = List.copyOf(properties);
        room = List.copyOf(room);
        propertyRoom = List.copyOf(propertyRoom);
        alternatives = List.copyOf(alternatives);
        money = List.copyOf(money);
    }

    /**
     * What the blend costs, in money.
     *
     * @param currency null when no document states one
     * @param perKg per kilogram, cooked where the basis is
     * @param perLb the same per pound
     * @param batch for the whole batch
     * @param perKgExact numerator and denominator
     * @param rawPerKg per kilogram weighed in
     * @param left kilograms left after cooking of each kilogram weighed in; one where the basis is raw
     * @param overTarget money per kilogram above the brief's target, below zero where it is met; null without a target
     */
    public record Cost(
            @Nullable String currency,
            BigFraction perKg,
            BigFraction perLb,
            BigFraction batch,
            Basis basis,
            String perKgExact,
            @JsonIgnore BigFraction rawPerKg,
            @JsonIgnore BigFraction left,
            @JsonIgnore @Nullable BigFraction overTarget) {}

    /** The weight that a cost is counted for. */
    public enum Basis {
        RAW,
        COOKED
    }

    /**
     * A line of the blend.
     *
     * @param ingredient its id
     * @param stage id of the stage it goes into
     * @param share of the batch
     * @param cost money in the batch
     * @param costShare of the cost of all ingredients
     * @param name of the ingredient
     * @param stageTitle the stage as people read it
     * @param pricePerKg money per kilogram as bought
     * @param usable share of what is bought that can be used
     * @param kilograms in the batch
     * @param holds what the ingredient states of each property of the result, in its unit; null where it does not
     */
    public record BlendLine(
            String ingredient,
            String stage,
            String supplier,
            BigFraction share,
            BigFraction grams,
            BigFraction cost,
            BigFraction costShare,
            @JsonIgnore String name,
            @JsonIgnore String stageTitle,
            @JsonIgnore BigFraction pricePerKg,
            @JsonIgnore BigFraction usable,
            @JsonIgnore BigFraction kilograms,
            @JsonIgnore List<@Nullable BigFraction> holds) {}

    /**
     * An ingredient that could be bought but is not used.
     *
     * @param entersAt the price per kilogram as bought below which it would come in; null when no price above zero does
     * @param share how much of the batch it would then make up; null as before
     * @param savingPerKg what a price five per cent lower still would save; null as before
     * @param worthwhile whether that saving is worth telling
     * @param pricePerKg the cheapest offer's price, as bought
     * @param supplier whose offer that is
     * @param name of the ingredient
     */
    public record UnusedIngredient(
            String ingredient,
            @Nullable BigFraction entersAt,
            @Nullable BigFraction share,
            @Nullable BigFraction savingPerKg,
            boolean worthwhile,
            BigFraction pricePerKg,
            String supplier,
            @JsonIgnore String name) {}

    /**
     * Ingredients that could be bought but are not used, by how little of their price must go before they come in.
     *
     * @param first the nearest, that first; all of them by id where they are few
     * @param others how many more there are, of which none comes in before those
     */
    public record NearestUnused(List<UnusedIngredient> first, int others) {
        public NearestUnused {
            first = List.copyOf(first);
        }
    }

    /** A property of the blend; the value is null when some ingredient's is not known. */
    public record PropertyValue(
            String property,
            @Nullable BigFraction value,
            String unit,
            @JsonIgnore String title) {}

    /**
     * Between which prices per kilogram as bought the blend stays the best.
     *
     * @param from null when the blend stays however cheap it gets
     * @param to null when the blend stays however dear it gets
     * @param name of the ingredient
     * @param share of the ingredient over all stages and suppliers
     * @param least the least it may make up of a blend nearby; null when not measured
     * @param most the most; null when not measured
     */
    public record PriceRange(
            String ingredient,
            String supplier,
            BigFraction pricePerKg,
            @Nullable BigFraction from,
            @Nullable BigFraction to,
            @JsonIgnore String name,
            @JsonIgnore BigFraction share,
            @JsonIgnore @Nullable BigFraction least,
            @JsonIgnore @Nullable BigFraction most) {}

    /** Least and most share of an ingredient. */
    public record IngredientRoom(String ingredient, BigFraction min, BigFraction max) {}

    /** Least and most of a property, in its unit. */
    public record PropertyRoom(String property, BigFraction min, BigFraction max, String unit) {}

    /**
     * A blend nearby.
     *
     * @param changes of shares, as far as they are seen, by id of the ingredient
     */
    public record Alternative(
            BigFraction perKg,
            List<ShareLine> blend,
            @JsonIgnore List<ShareChange> changes) {
        public Alternative {
            blend = List.copyOf(blend);
            changes = List.copyOf(changes);
        }
    }

    /** How much more of the batch an ingredient, by its name, makes up. */
    public record ShareChange(String name, BigFraction change) {}

    /**
     * How the blend was proved.
     *
     * @param primal whether it was found to meet every bound in exact fractions
     * @param dual whether it was found that no blend costs less
     * @param gap by what part of itself the cost may be above the least; zero once that is ruled out
     * @param engine what found the blend
     * @param choice how good the rules' choice of ingredients is; null when there are no rules
     * @param boundPerKg no blend costs less, proved; null where the blend's own cost is that least, or rules leave a
     *     choice
     * @param rows how many conditions the blend was put into
     * @param complete whether everything that was checked is exact, and nothing is left open
     */
    public record Certificate(
            Check primal,
            Check dual,
            BigFraction gap,
            String engine,
            @JsonInclude(Include.NON_NULL) @Nullable Choice choice,
            @JsonInclude(Include.NON_NULL) @Nullable BigFraction boundPerKg,
            @JsonIgnore int rows,
            @JsonIgnore boolean complete) {}

    /** What came of a check. */
    public enum Check {
        EXACT,
        FAILED
    }

    /**
     * How good a choice of ingredients is, among all that the rules leave.
     *
     * @param engine what found it
     * @param proved whether no other choice is cheaper, in exact fractions
     * @param boundPerKg no blend that keeps the rules costs less, proved in exact fractions
     * @param looked how many sets of choices were looked at
     * @param searchBoundPerKg below which no cost can be according to the search; null when it said nothing
     */
    public record Choice(
            String engine,
            boolean proved,
            BigFraction boundPerKg,
            int looked,
            @Nullable BigFraction searchBoundPerKg) {}

    /**
     * The least cost at one number of names on the label.
     *
     * @param names at most
     * @param costPerKg null where there is no such blend, or none is known
     * @param undecided why none is known; null elsewhere
     * @param dearerPerKg than the cheapest blend; null where the cost is
     */
    public record Rung(
            int names,
            @Nullable BigFraction costPerKg,
            @JsonInclude(Include.NON_NULL) @Nullable String undecided,
            @JsonIgnore @Nullable BigFraction dearerPerKg) {}

    /**
     * What keeping a printed label costs, in money per kilogram.
     *
     * @param freePerKg the cheapest blend under any label
     * @param extraPerKg how much more the cheapest costs that keeps the label
     */
    public record LabelPrice(BigFraction freePerKg, BigFraction extraPerKg) {}

    /** What an ingredient, by its name, takes of the money and of the weight. */
    public record IngredientCost(String name, BigFraction costPerKg, BigFraction costShare, BigFraction share) {}

    /**
     * What the ingredients of a blend carry.
     *
     * @param stated allergens, in order
     * @param unknownFor names of ingredients for which nobody says
     */
    public record Allergens(List<String> stated, List<String> unknownFor) {
        public Allergens {
            stated = List.copyOf(stated);
            unknownFor = List.copyOf(unknownFor);
        }
    }
}
