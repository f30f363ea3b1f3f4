package panade.report.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.report.blend.ConflictReport;
import panade.result.BlendResult;
import panade.result.BriefResult;
import panade.result.NoBlendResult;
import panade.result.SwapResult;
import panade.result.SwapResult.AllergenChange;
import panade.result.SwapResult.Amount;
import panade.result.SwapResult.Changes;
import panade.result.SwapResult.Failure;
import panade.result.SwapResult.StandIn;
import panade.result.SwapResult.Works;

/** Words what replaces an ingredient that is out. */
public final class SwapReport {
    private final SwapResult swap;
    private final BlendResult before;
    private final String currency;

    private SwapReport(SwapResult swap) {
        this.swap = swap;
        this.before = swap.before();
        this.currency =
                before.brief().currency().isEmpty() ? "" : " " + before.brief().currency();
    }

    /** The report. */
    public static ReportDocument of(SwapResult swap) {
        return new SwapReport(swap).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph(
                swap.after() instanceof BriefResult.Undecided
                        ? "With it: proved in exact fractions. Without it nothing is proved."
                        : "Proved in exact fractions, with it and without."));
        if (swap.changes() != null) {
            addChanges(blocks, swap.changes());
        }
        if (swap.after() instanceof NoBlendResult none) {
            blocks.addAll(ConflictReport.body(none));
        }
        addStandIns(blocks);
        return Remarks.on(
                new ReportDocument(before.brief().title() + ": " + String.join(", ", swap.outNames()) + " out", blocks),
                swap.remarks());
    }

    private String verdict() {
        var was = perLb(before.cost().perKg());
        var with = " With it the cheapest costs " + was + currency + "/lb.";
        return swap.after()
                .fold(
                        after -> "The best blend without it costs "
                                + perLb(after.cost().perKg()) + currency + "/lb instead of " + was + ": "
                                + signed(after.cost()
                                        .perKg()
                                        .subtract(before.cost().perKg())) + currency + "/lb.",
                        none -> "None can: no blend keeps every bound without it." + with,
                        open -> "Whether anything can replace it could not be decided: " + open.reason() + "." + with);
    }

    private static String perLb(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private static String signed(BigFraction perKg) {
        return (perKg.signum() < 0 ? "" : "+") + perLb(perKg);
    }

    private void addChanges(List<Block> blocks, Changes changes) {
        blocks.add(new Heading("What changes in the " + before.brief().batch() + " batch"));
        blocks.add(new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("grams before", true),
                        new Column("grams after", true),
                        new Column("change", true)),
                changes.amounts().stream().map(SwapReport::row).toList()));
        blocks.add(new Points(consequences(changes)));
    }

    private static List<String> row(Amount amount) {
        var change = amount.after().subtract(amount.before());
        return List.of(
                amount.name(),
                Figures.grams(amount.before()),
                Figures.grams(amount.after()),
                (change.signum() > 0 ? "+" : "-") + Figures.grams(change.abs()));
    }

    private List<String> consequences(Changes changes) {
        var label = Objects.requireNonNull(swap.label());
        return List.of(
                changes.newlyBinding().isEmpty()
                        ? "No bound binds that did not before."
                        : "Now binding: " + String.join(", ", changes.newlyBinding()) + ".",
                allergens(changes, Objects.requireNonNull(swap.allergens())),
                label.names().stay()
                        ? "The ingredient statement stays the same."
                        : "Ingredient statement, draft: " + String.join(", ", changes.statement()) + ".",
                "Label: " + LabelWords.names(label) + "; " + LabelWords.panel(label) + ".");
    }

    private static String allergens(Changes changes, AllergenChange change) {
        var open = changes.allergensNotKnown();
        var rest = open.isEmpty() ? "." : "; not known for " + String.join("; ", open) + ".";
        if (change.added().isEmpty() && change.removed().isEmpty()) {
            var stay = open.isEmpty() ? "Allergens stay the same: " : "Allergens stated stay the same: ";
            return stay
                    + (changes.allergens().isEmpty() ? "none stated" : String.join(", ", changes.allergens()))
                    + rest;
        }
        return "Allergens added: " + listed(change.added()) + "; gone: " + listed(change.removed()) + rest;
    }

    private static String listed(List<String> names) {
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
                swap.standIns().stream().map(SwapReport::row).toList()));
    }

    private static List<String> row(StandIn standIn) {
        return standIn.fold(
                SwapReport::row,
                fails -> List.of(fails.name(), "", "none", "", failure(fails.fails())),
                open -> List.of(open.name(), "", "not known", "", open.undecided()));
    }

    private static List<String> row(Works standIn) {
        return List.of(
                standIn.name(),
                Figures.percent(standIn.share()),
                perLb(standIn.costPerKg()),
                signed(standIn.changePerKg()),
                standIn.share().signum() == 0 ? "the blend does without it" : added(standIn.allergens()));
    }

    private static String added(AllergenChange change) {
        var words = change.added().isEmpty() ? "" : "adds " + String.join(", ", change.added());
        return change.notKnown().isEmpty() ? words : words + (words.isEmpty() ? "" : "; ") + "allergens not known";
    }

    private static String failure(@Nullable Failure failure) {
        return failure == null
                ? "more than one bound gives"
                : failure.name() + ": " + Figures.significant(failure.reaches(), 3) + " of "
                        + Figures.exactly(failure.needs(), failure.unit());
    }
}
