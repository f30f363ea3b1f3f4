package panade.report;

import panade.cost.LabelPrice;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.plan.Outcome.Blended;

/** Words what the cheapest blend costs, how that compares with the target, and what is proved of it. */
public final class VerdictWords {
    private final Blended outcome;
    private final Brief brief;
    private final Blend blend;

    /** Words for a blend. */
    public VerdictWords(Blended outcome) {
        this.outcome = outcome;
        this.brief = outcome.brief();
        this.blend = outcome.blend();
    }

    /** Cost and target in one paragraph. */
    String verdict() {
        var words = "Cheapest blend: " + perPound() + ", " + rest();
        return brief.target() == null ? words : words + " " + target();
    }

    /** The cost of a pound. */
    public String perPound() {
        return spaced(Figures.money(Figures.perPound(blend.costPerKg()))) + (isCooked() ? " per cooked lb" : "/lb");
    }

    /** The cost of a kilogram and of the batch. */
    public String rest() {
        return spaced(Figures.money(blend.costPerKg())) + (isCooked() ? " per cooked kg" : "/kg") + "; the "
                + brief.batch().text() + " batch costs "
                + spaced(
                        Figures.cash(blend.rawCostPerKg().multiply(brief.batch().base()))) + ". Ingredients only.";
    }

    /** How far the cost is from the target; empty when there is none. */
    public String target() {
        var target = brief.target();
        if (target == null) {
            return "";
        }
        var spare = Figures.perPound(target.perKg().subtract(blend.costPerKg()));
        var distance = spaced(Figures.money(spare.abs())) + "/lb";
        return "Target " + target.text() + ": "
                + (spare.signum() >= 0 ? "met, with " + distance + " to spare." : "missed by " + distance + ".");
    }

    /** What is proved, and by what. */
    public String proof() {
        var choice = outcome.choice() == null ? "" : "with this choice of ingredients, ";
        var proof = outcome.proof().proof();
        var words = (proof.isComplete() ? "Proved: " : "Not proved: ") + choice
                + "no blend that keeps every bound costs less ("
                + (proof.isComplete() ? "checked in exact fractions" : "the check in exact fractions failed")
                + "; found by " + proof.engine() + ").";
        return outcome.explanation().unique()
                ? words
                : words + " Other blends cost exactly the same: compare costs, not shares.";
    }

    /** What keeping a printed label costs. */
    public String label(LabelPrice label) {
        var free = spaced(Figures.money(Figures.perPound(label.freePerKg()))) + "/lb";
        return label.extraPerKg().signum() == 0
                ? "It keeps the printed label, which costs nothing: no blend under another is cheaper."
                : "It keeps the printed label, which costs "
                        + spaced(Figures.money(Figures.perPound(label.extraPerKg())))
                        + "/lb: under any other label the cheapest blend costs " + free + " (proved as well).";
    }

    private boolean isCooked() {
        return brief.practice().perCooked();
    }

    private String spaced(String figure) {
        return brief.currency().isEmpty() ? figure : figure + " " + brief.currency();
    }
}
