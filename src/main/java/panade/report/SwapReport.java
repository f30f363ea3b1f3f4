package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.cost.LabelStudy;
import panade.explain.Explanation.Limit;
import panade.explain.conflict.Conflict.Change;
import panade.label.Allergens;
import panade.label.Statement;
import panade.plan.Outcome.Blended;
import panade.plan.Outcome.Conflicted;
import panade.plan.Outcome.Undecided;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.substitute.Substitution;
import panade.substitute.Substitution.StandIn;

/** Words what replaces an ingredient that is out. */
public final class SwapReport {
    private final Substitution swap;
    private final Blended before;
    private final String currency;

    private SwapReport(Substitution swap) {
        this.swap = swap;
        this.before = swap.before();
        this.currency =
                before.brief().currency().isEmpty() ? "" : " " + before.brief().currency();
    }

    /** The report on a substitution. */
    public static ReportDocument of(Substitution swap) {
        return new SwapReport(swap).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph(
                swap.after() instanceof Undecided
                        ? "With it: proved in exact fractions. Without it nothing is proved."
                        : "Proved in exact fractions, with it and without."));
        if (swap.after() instanceof Blended after) {
            addChanges(blocks, after);
        } else if (swap.after() instanceof Conflicted conflicted) {
            blocks.addAll(ConflictReport.body(conflicted));
        }
        addStandIns(blocks);
        return Remarks.under(
                new ReportDocument(before.brief().title() + ": " + outNames() + " out", blocks),
                before.asked().remarks());
    }

    private String outNames() {
        return String.join(", ", swap.out().stream().map(this::name).toList());
    }

    private String name(String id) {
        return before.brief().set().ingredient(id).name();
    }

    private String verdict() {
        var was = perLb(before.blend().costPerKg());
        if (swap.after() instanceof Blended after) {
            var change = after.blend().costPerKg().subtract(before.blend().costPerKg());
            return "The best blend without it costs " + perLb(after.blend().costPerKg()) + currency + "/lb instead of "
                    + was + ": " + signed(change) + currency + "/lb.";
        }
        var with = " With it the cheapest costs " + was + currency + "/lb.";
        return swap.after() instanceof Undecided open
                ? "Whether anything can replace it could not be decided: " + open.reason() + "." + with
                : "None can: no blend keeps every bound without it." + with;
    }

    private static String perLb(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private static String signed(BigFraction perKg) {
        return (perKg.signum() < 0 ? "" : "+") + perLb(perKg);
    }

    private void addChanges(List<Block> blocks, Blended after) {
        blocks.add(new Heading("What changes in the " + before.brief().batch().text() + " batch"));
        blocks.add(new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("grams before", true),
                        new Column("grams after", true),
                        new Column("change", true)),
                changes(after)));
        blocks.add(new Points(consequences(after)));
    }

    private List<List<String>> changes(Blended after) {
        var ids = new TreeSet<String>();
        before.blend().lines().forEach(line -> ids.add(line.use().ingredient()));
        after.blend().lines().forEach(line -> ids.add(line.use().ingredient()));
        var batch = before.brief().batch().base();
        var rows = new ArrayList<List<String>>();
        for (var id : ids) {
            var was = before.blend().shareOf(id).multiply(batch);
            var is = after.blend().shareOf(id).multiply(batch);
            var change = is.subtract(was);
            if (change.signum() != 0) {
                var sign = change.signum() > 0 ? "+" : "-";
                rows.add(List.of(name(id), Figures.grams(was), Figures.grams(is), sign + Figures.grams(change.abs())));
            }
        }
        return rows;
    }

    private List<String> consequences(Blended after) {
        var points = new ArrayList<String>();
        var bind = new TreeSet<>(binding(after));
        bind.removeAll(binding(before));
        points.add(
                bind.isEmpty()
                        ? "No bound binds that did not before."
                        : "Now binding: " + String.join(", ", bind) + ".");
        points.add(allergens(after));
        var statement = Statement.names(after.brief(), after.blend());
        var change = LabelStudy.between(before, after);
        points.add(
                change.keepsNames()
                        ? "The ingredient statement stays the same."
                        : "Ingredient statement, draft: " + String.join(", ", statement) + ".");
        points.add("Label: " + LabelWords.names(change) + "; " + LabelWords.panel(change) + ".");
        return points;
    }

    private static List<String> binding(Blended outcome) {
        return outcome.explanation().limits().stream()
                .filter(limit -> limit.touch() != null)
                .map(Limit::title)
                .toList();
    }

    private String allergens(Blended after) {
        var was = Allergens.stated(before.brief(), before.blend());
        var is = Allergens.stated(after.brief(), after.blend());
        var added = new TreeSet<>(is);
        added.removeAll(was);
        var removed = new TreeSet<>(was);
        removed.removeAll(is);
        var open = Allergens.notKnown(after.brief(), after.blend());
        var rest = open.isEmpty() ? "." : "; not known for " + String.join("; ", open) + ".";
        if (added.isEmpty() && removed.isEmpty()) {
            var stay = open.isEmpty() ? "Allergens stay the same: " : "Allergens stated stay the same: ";
            return stay + (is.isEmpty() ? "none stated" : String.join(", ", is)) + rest;
        }
        return "Allergens added: " + listed(added) + "; gone: " + listed(removed) + rest;
    }

    private static String listed(Set<String> names) {
        return names.isEmpty() ? "none" : String.join(", ", names);
    }

    private void addStandIns(List<Block> blocks) {
        blocks.add(new Heading("Each stand-in on its own, others of the missing one's kinds left out"));
        if (swap.standIns().isEmpty()) {
            blocks.add(new Paragraph("Nothing that can be bought shares a kind with it or does one of its jobs."));
            return;
        }
        blocks.add(new Table(
                List.of(
                        new Column("Stand-in", false),
                        new Column("Share %", true),
                        new Column("Cost /lb", true),
                        new Column("Change", true),
                        new Column("", false)),
                swap.standIns().stream().map(this::row).toList()));
    }

    private List<String> row(StandIn standIn) {
        var blended = standIn.blended();
        if (blended == null) {
            var reason = standIn.undecided();
            return reason == null
                    ? List.of(name(standIn.ingredient()), "", "none", "", failure(standIn))
                    : List.of(name(standIn.ingredient()), "", "not known", "", reason);
        }
        var cost = blended.blend().costPerKg();
        return List.of(
                name(standIn.ingredient()),
                Figures.percent(standIn.share()),
                perLb(cost),
                signed(cost.subtract(before.blend().costPerKg())),
                standIn.share().signum() == 0 ? "the blend does without it" : added(blended));
    }

    private String added(Blended blended) {
        var added = new TreeSet<>(Allergens.stated(blended.brief(), blended.blend()));
        added.removeAll(Allergens.stated(before.brief(), before.blend()));
        var open = new TreeSet<>(Allergens.notKnown(blended.brief(), blended.blend()));
        open.removeAll(Allergens.notKnown(before.brief(), before.blend()));
        var words = added.isEmpty() ? "" : "adds " + String.join(", ", added);
        return open.isEmpty() ? words : words + (words.isEmpty() ? "" : "; ") + "allergens not known";
    }

    private static String failure(StandIn standIn) {
        var cure = standIn.failure();
        if (cure == null) {
            return "more than one bound gives";
        }
        var moves = (Change.Moves) cure.change();
        return cure.name() + ": " + Figures.significant(moves.to(), 3) + " of "
                + Figures.exactly(moves.from(), moves.unit());
    }
}
