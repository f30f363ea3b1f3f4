package panade.domain;

import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.purchase.Costs;
import panade.domain.purchase.Shelf;
import panade.quantity.Quantity;

/**
 * What a brief says beyond the blend itself, checked when it is read and used by the commands that need it.
 *
 * @param rules about which ingredients are used, the ceiling on their number last; they make the model a mixed-integer
 *     one
 * @param cookingLoss fraction of each component that is lost in cooking
 * @param perCooked whether cost is counted per cooked weight
 * @param cookedWeight what the batch weighs after cooking; null when nothing is said of cooking
 * @param costs what it costs beside ingredients; null when not stated
 * @param shelf what it sells for; null when not stated
 * @param weighing the scale's resolution; null when not stated
 * @param serving the weight of a serving; null when not stated
 * @param sameLabel the label that must stay true; null for none
 */
public record Practice(
        List<Rule> rules,
        Map<String, BigFraction> cookingLoss,
        boolean perCooked,
        @Nullable Measure cookedWeight,
        @Nullable Costs costs,
        @Nullable Shelf shelf,
        @Nullable Quantity weighing,
        @Nullable Quantity serving,
        @Nullable SameLabel sameLabel) {
    public Practice {
        rules = List.copyOf(rules);
    }

    /** The same with other rules. */
    public Practice withRules(List<Rule> others) {
        return new Practice(others, cookingLoss, perCooked, cookedWeight, costs, shelf, weighing, serving, sameLabel);
    }

    /** The same with another label to keep; null for none. */
    public Practice withLabel(@Nullable SameLabel label) {
        return new Practice(rules, cookingLoss, perCooked, cookedWeight, costs, shelf, weighing, serving, label);
    }
}
