package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.explain.conflict.Conflict;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Cost;
import panade.explain.conflict.Conflict.Member;
import panade.explain.conflict.Conflict.Relaxation;
import panade.plan.Contradiction;
import panade.plan.Outcome.Conflicted;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words why no blend meets a brief and what would change that. */
public final class ConflictReport {
    private static final String VERDICT =
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

    /** The answer, and how it was proved. */
    public static String verdict(Conflicted outcome) {
        if (outcome.proof() instanceof Contradiction.RuledOut ruledOut) {
            int looked = ruledOut.proof().looked();
            return VERDICT + " The bounds alone leave blends; every choice that the rules leave was ruled out, after "
                    + looked + (looked == 1 ? " set" : " sets") + " of choices.";
        }
        return VERDICT;
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
    public static List<Block> body(Conflicted outcome) {
        return new ConflictReport(outcome).body();
    }

    private ReportDocument document() {
        return Remarks.under(
                new ReportDocument(outcome.brief().title(), body()),
                outcome.brief().remarks());
    }

    private List<Block> body() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict(outcome)));
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
            freeing(set).ifPresent(words -> blocks.add(new Paragraph(words)));
        }
        if (!conflict.proved()) {
            blocks.add(new Paragraph(
                    "That just these are in conflict is the search's word; that the whole brief is, is proved."));
        }
        others().ifPresent(words -> blocks.add(new Paragraph(words)));
        return blocks;
    }

    private List<Block> cures() {
        var blocks = new ArrayList<Block>();
        addCures(blocks);
        addCombined(blocks);
        if (!conflict.open().isEmpty()) {
            blocks.add(new Paragraph("Not decided in time:"));
            blocks.add(new Points(conflict.open()));
        }
        return blocks;
    }

    private static String headline(List<Member> set) {
        if (set.size() == 1) {
            return "This cannot be had:";
        }
        var words = "These " + set.size() + " cannot hold together";
        return set.stream().allMatch(Member::frees) ? words + "; without any one of them the rest can:" : words + ":";
    }

    /** Which members are enough to give up, where that is not so of all. */
    private static Optional<String> freeing(List<Member> set) {
        var freeing = set.stream().filter(Member::frees).map(Member::name).toList();
        return freeing.isEmpty() || freeing.size() == set.size()
                ? Optional.empty()
                : Optional.of("The rest can hold without " + String.join(", or without ", freeing)
                        + "; with another of them gone, something else still stands in the way.");
    }

    /** What stands beside the sets shown. */
    private Optional<String> others() {
        int shown = conflict.sets().size();
        if (conflict.separate() > shown) {
            return Optional.of("Beside that stand more: " + conflict.separate()
                    + " conflicts were found of which no two share a bound or rule, so that no fewer than "
                    + conflict.separate() + " changes are enough; \"blend --conflicts " + conflict.separate()
                    + "\" shows them.");
        }
        if (shown == 1 && conflict.sets().get(0).stream().noneMatch(Member::frees)) {
            return Optional.of("Other conflicts share one or another of these; \"blend --conflicts 5\" shows them.");
        }
        return shown > 1
                ? Optional.of(conflict.complete() ? "There are no other such sets." : "There may be more such sets.")
                : Optional.empty();
    }

    private static String words(Member member) {
        return member.name() + ": " + member.words();
    }

    private void addCures(List<Block> blocks) {
        if (conflict.cures().isEmpty()) {
            blocks.add(new Paragraph(
                    conflict.open().isEmpty()
                            ? "No single change makes a blend possible."
                            : "No single change was found that makes a blend possible."));
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

    private List<String> row(Relaxation cure) {
        if (cure.change() instanceof Change.Moves moves) {
            return List.of(cure.name(), Figures.exactly(moves.from(), moves.unit()), moved(moves), cost(cure.cost()));
        }
        return List.of(words(cure), "", "", cost(cure.cost()));
    }

    private static String words(Relaxation cure) {
        var words = cure.change() instanceof Change.Drops ? "without the rule: " : "allow ";
        return words + cure.name();
    }

    /** The number to write, or the two of a fixed bound that is opened. */
    static String moved(Change.Moves moves) {
        var kept = moves.kept();
        return Figures.moved(
                moves.from(),
                moves.to(),
                moves.unit().symbol(),
                kept == null ? null : kept.number(),
                kept == null ? null : kept.unit().symbol());
    }

    private String cost(@Nullable Cost cost) {
        var currency = outcome.brief().currency();
        if (cost == null) {
            return "price not known";
        }
        var words = Figures.money(Figures.perPound(cost.perKg())) + (currency.isEmpty() ? "" : " " + currency);
        return cost.least() ? words : "at most " + words;
    }

    private void addCombined(List<Block> blocks) {
        if (conflict.combined().isEmpty()) {
            return;
        }
        var lead = conflict.cures().isEmpty() ? "Together these do" : "Without allowing anything, these do together";
        blocks.add(new Paragraph(lead + " (solved with; while the others stay, none can be left out or move less):"));
        var points = new ArrayList<String>();
        for (var cure : conflict.combined()) {
            points.add(
                    cure.change() instanceof Change.Moves moves
                            ? cure.name() + ": from " + Figures.exactly(moves.from(), moves.unit()) + " to "
                                    + moved(moves)
                            : words(cure));
        }
        blocks.add(new Points(points));
        blocks.add(new Paragraph("Then the cheapest blend costs " + cost(conflict.combinedCost()) + "/lb."));
    }
}
