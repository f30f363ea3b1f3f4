package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.report.Figures;
import panade.result.BlendResult;
import panade.result.BlendResult.Basis;
import panade.result.BlendResult.LabelPrice;

/** Words what the cheapest blend costs, how that compares with the target, and what is proved of it. */
public final class VerdictWords {
    private final BlendResult result;

    /** Words for a blend. */
    public VerdictWords(BlendResult result) {
        this.result = result;
    }

    /** Cost and target in one paragraph. */
    String verdict() {
        var words = "Cheapest blend: " + perPound() + ", " + rest();
        return target().isEmpty() ? words : words + " " + target();
    }

    /** What is proved, how good the rules' choice is, and what a printed label costs; each one paragraph. */
    List<String> reasons() {
        var reasons = new ArrayList<>(List.of(proof()));
        reasons.addAll(choice());
        reasons.addAll(label());
        return reasons;
    }

    /** The cost of a pound. */
    public String perPound() {
        return spaced(Figures.money(result.cost().perLb())) + (isCooked() ? " per cooked lb" : "/lb");
    }

    /** The cost of a kilogram and of the batch. */
    public String rest() {
        return spaced(Figures.money(result.cost().perKg())) + (isCooked() ? " per cooked kg" : "/kg") + "; the "
                + result.brief().batch() + " batch costs "
                + spaced(Figures.cash(result.cost().batch())) + ". Ingredients only.";
    }

    /** How far the cost is from the target; empty when there is none. */
    public String target() {
        var target = result.brief().target();
        var over = result.cost().overTarget();
        if (target == null || over == null) {
            return "";
        }
        var distance = perPound(over.abs());
        return "Target " + target.text() + ": "
                + (over.signum() <= 0 ? "met, with " + distance + " to spare." : "missed by " + distance + ".");
    }

    /** What is proved, and by what. */
    public String proof() {
        var certificate = result.certificate();
        if (certificate.boundPerKg() != null) {
            return "Proved in exact fractions: it keeps every bound, those that are to be sure as well, and no blend that"
                    + " does is cheaper by more than "
                    + Figures.significant(certificate.gap().multiply(100), 2)
                    + " % (found by " + certificate.engine() + "). Other blends can cost as good as the same: compare"
                    + " costs, not shares.";
        }
        var choice = certificate.choice() == null ? "" : "with this choice of ingredients, ";
        var words = (certificate.complete() ? "Proved: " : "Not proved: ") + choice
                + "no blend that keeps every bound costs less ("
                + (certificate.complete() ? "checked in exact fractions" : "the check in exact fractions failed")
                + "; found by " + certificate.engine() + ").";
        return result.unique().get()
                ? words
                : words + " Other blends cost exactly the same: compare costs, not shares.";
    }

    /** How good the choice of ingredients is; nothing when there are no rules. */
    public List<String> choice() {
        var choice = result.certificate().choice();
        return choice == null
                ? List.of()
                : List.of(ChoiceWords.of(choice, result.certificate().gap()));
    }

    /** What keeping a printed label costs; nothing when none is kept. */
    public List<String> label() {
        var label = result.sameLabel();
        return label == null ? List.of() : List.of(label(label));
    }

    private String label(LabelPrice label) {
        return label.extraPerKg().signum() == 0
                ? "It keeps the printed label, which costs nothing: no blend under another is cheaper."
                : "It keeps the printed label, which costs " + perPound(label.extraPerKg())
                        + ": under any other label the cheapest blend costs " + perPound(label.freePerKg())
                        + " (proved as well).";
    }

    private boolean isCooked() {
        return result.cost().basis() == Basis.COOKED;
    }

    private String perPound(BigFraction perKg) {
        return spaced(Figures.money(Figures.perPound(perKg))) + "/lb";
    }

    private String spaced(String figure) {
        var currency = result.brief().currency();
        return currency.isEmpty() ? figure : figure + " " + currency;
    }
}
