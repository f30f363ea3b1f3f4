package panade.report.blend;

import org.apache.commons.numbers.fraction.BigFraction;
import panade.report.Figures;
import panade.result.BlendResult.Choice;

/** Words how good a choice of ingredients is that rules left open. */
final class ChoiceWords {
    private ChoiceWords() {}

    /**
     * The words.
     *
     * @param gap by what part of itself the cost may be above the least
     */
    static String of(Choice choice, BigFraction gap) {
        var found = "The rules leave a choice of ingredients, found by " + choice.engine() + ". ";
        var prices = " Every price and rate below is with this choice of ingredients.";
        if (choice.proved()) {
            return found + "No other choice is cheaper: " + looked(choice) + " in exact fractions." + prices;
        }
        return found + "The search says that no other is cheaper; in exact fractions, after "
                + choice.looked() + " sets of choices, it is proved that none is cheaper by more than "
                + Figures.significant(gap.multiply(100), 2) + " %." + prices;
    }

    private static String looked(Choice choice) {
        return choice.looked() == 1
                ? "one relaxation rules all out"
                : choice.looked() + " sets of choices looked at and the rest ruled out";
    }
}
