package panade.report;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.explain.Conflict;
import panade.explain.Conflict.Change;
import panade.explain.Conflict.Cure;
import panade.explain.Conflict.Member;
import panade.plan.Outcome.Conflicted;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words why no blend meets a brief and what would change that. */
public final class ConflictReport {
    /** The answer in one sentence. */
    public static final String VERDICT =
            "No blend can meet every bound with the offers at hand (proved in exact fractions).";

    private final Conflicted outcome;
    private final Conflict conflict;

    private ConflictReport(Conflicted outcome) {
        this.outcome = outcome;
        this.conflict = outcome.conflict();
    }

    /** The report on a brief that cannot be met. */
    public static ReportDocument of(Conflicted outcome) {
        return new ConflictReport(outcome).document();
    }

    /** What is in conflict. */
    public static List<Block> sets(Conflicted outcome) {
        return new ConflictReport(outcome).sets();
    }

    /** What would make a blend possible. */
    public static List<Block> cures(Conflicted outcome) {
        return new ConflictReport(outcome).cures();
    }

    /** All of it but the title and the remarks. */
    static List<Block> body(Conflicted outcome) {
        return new ConflictReport(outcome).body();
    }

    private ReportDocument document() {
        return Remarks.under(
                new ReportDocument(outcome.brief().title(), body()),
                outcome.brief().remarks());
    }

    private List<Block> body() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(VERDICT));
        blocks.addAll(sets());
        blocks.addAll(cures());
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(Cautions.ofChanges()));
        return blocks;
    }

    private List<Block> sets() {
        var blocks = new ArrayList<Block>();
        for (var set : conflict.sets()) {
            blocks.add(new Paragraph(headline(set)));
            blocks.add(new Points(set.stream().map(ConflictReport::words).toList()));
        }
        if (conflict.sets().size() > 1) {
            blocks.add(new Paragraph(
                    conflict.complete() ? "There are no other such sets." : "There may be more such sets."));
        }
        return blocks;
    }

    private List<Block> cures() {
        var blocks = new ArrayList<Block>();
        addCures(blocks);
        addCombined(blocks);
        return blocks;
    }

    private static String headline(List<Member> set) {
        return set.size() == 1
                ? "This cannot be had:"
                : "These " + set.size() + " cannot hold together; without any one of them the rest can:";
    }

    private static String words(Member member) {
        return member.name() + ": " + member.words();
    }

    private void addCures(List<Block> blocks) {
        if (conflict.cures().isEmpty()) {
            blocks.add(new Paragraph("No single change makes a blend possible."));
            return;
        }
        blocks.add(new Paragraph("Any one of these changes makes a blend possible (each was solved with):"));
        var columns = List.of(
                new Column("Change", false),
                new Column("from", true),
                new Column("to", true),
                new Column("cost /lb", true));
        blocks.add(new Table(columns, conflict.cures().stream().map(this::row).toList()));
    }

    private List<String> row(Cure cure) {
        if (cure.change() instanceof Change.Moves moves) {
            return List.of(
                    cure.name(),
                    Figures.exactly(moves.from(), moves.unit()),
                    Figures.exactly(moves.to(), moves.unit()),
                    cost(cure.costPerKg()));
        }
        var words = cure.change() instanceof Change.Drops ? "without the rule: " : "allow ";
        return List.of(words + cure.name(), "", "", cost(cure.costPerKg()));
    }

    private String cost(@Nullable BigFraction perKg) {
        var currency = outcome.brief().currency();
        if (perKg == null) {
            return "price not known";
        }
        return Figures.money(Figures.perPound(perKg)) + (currency.isEmpty() ? "" : " " + currency);
    }

    private void addCombined(List<Block> blocks) {
        if (conflict.combined().isEmpty()) {
            return;
        }
        var moves = new ArrayList<String>();
        for (var cure : conflict.combined()) {
            var change = (Change.Moves) cure.change();
            moves.add(cure.name() + " to " + Figures.exactly(change.to(), change.unit()));
        }
        blocks.add(new Paragraph("The least joint move: " + String.join(", ", moves) + "; then "
                + cost(conflict.combinedCostPerKg()) + "/lb."));
    }
}
