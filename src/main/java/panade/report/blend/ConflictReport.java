package panade.report.blend;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Cautions;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.NoBlendResult;
import panade.result.NoBlendResult.Member;
import panade.result.NoBlendResult.Move;
import panade.result.NoBlendResult.Relaxation;
import panade.result.NoBlendResult.Switch;

/** Words why no blend meets a brief and what would change that. */
public final class ConflictReport {
    private static final String VERDICT =
            "No blend can meet every bound with the offers at hand (proved in exact fractions).";

    private final NoBlendResult result;

    private ConflictReport(NoBlendResult result) {
        this.result = result;
    }

    /** The report on a brief that cannot be met. */
    public static ReportDocument of(NoBlendResult result) {
        return new ConflictReport(result).document();
    }

    /** The answer, and how it was proved. */
    public static String verdict(NoBlendResult result) {
        var looked = result.certificate().looked();
        return looked == null
                ? VERDICT
                : VERDICT + " The bounds alone leave blends; every choice that the rules leave was ruled out, after "
                        + looked + (looked == 1 ? " set" : " sets") + " of choices.";
    }

    /** What is in conflict. */
    public static List<Block> sets(NoBlendResult result) {
        return new ConflictReport(result).sets();
    }

    /** What would make a blend possible. */
    public static List<Block> cures(NoBlendResult result) {
        return new ConflictReport(result).cures();
    }

    /** All of it but the title and the remarks. */
    public static List<Block> body(NoBlendResult result) {
        return new ConflictReport(result).body();
    }

    private ReportDocument document() {
        return Remarks.on(
                new ReportDocument(result.brief().title(), body()),
                Objects.requireNonNullElse(result.remarks(), List.of()));
    }

    private List<Block> body() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict(result)));
        blocks.addAll(sets());
        blocks.addAll(cures());
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(Cautions.ofChanges()));
        return blocks;
    }

    private List<Block> sets() {
        var blocks = new ArrayList<Block>();
        for (var set : result.members()) {
            blocks.add(new Paragraph(headline(set)));
            blocks.add(new Points(set.stream().map(ConflictReport::words).toList()));
            freeing(set).ifPresent(words -> blocks.add(new Paragraph(words)));
        }
        if (!result.conflictProved()) {
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
        if (!result.undecided().isEmpty()) {
            blocks.add(new Paragraph("Not decided in time:"));
            blocks.add(new Points(result.undecided()));
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
        int shown = result.members().size();
        if (result.separateConflicts() > shown) {
            return Optional.of("Beside that stand more: " + result.separateConflicts()
                    + " conflicts were found of which no two share a bound or rule, so that no fewer than "
                    + result.separateConflicts() + " changes are enough; \"blend --conflicts "
                    + result.separateConflicts()
                    + "\" shows them.");
        }
        if (shown == 1 && result.members().get(0).stream().noneMatch(Member::frees)) {
            return Optional.of("Other conflicts share one or another of these; \"blend --conflicts 5\" shows them.");
        }
        return shown > 1
                ? Optional.of(result.allConflicts() ? "There are no other such sets." : "There may be more such sets.")
                : Optional.empty();
    }

    private static String words(Member member) {
        return member.name() + ": " + member.words();
    }

    private void addCures(List<Block> blocks) {
        if (result.cures().isEmpty()) {
            blocks.add(new Paragraph(
                    result.undecided().isEmpty()
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
        blocks.add(new Table(columns, result.cures().stream().map(this::row).toList()));
    }

    private List<String> row(Relaxation cure) {
        var cost = cost(cure.costPerKg(), cure.costProved());
        return cure.change() instanceof Move move
                ? List.of(cure.name(), Figures.exactly(move.from(), move.unit()), moved(move), cost)
                : List.of(words(cure), "", "", cost);
    }

    private static String words(Relaxation cure) {
        return (cure.change().equals(Switch.DROPPED) ? "without the rule: " : "allow ") + cure.name();
    }

    /** The number to write, or the two of a fixed bound that is opened. */
    public static String moved(Move move) {
        return Figures.moved(move.from(), move.to(), move.unit(), move.kept(), move.keptUnit());
    }

    private String cost(@Nullable BigFraction perKg, @Nullable Boolean proved) {
        return cost(result, perKg, proved);
    }

    /** What a pound costs with a change, as far as it is known; without the word for a pound. */
    public static String cost(NoBlendResult result, @Nullable BigFraction perKg, @Nullable Boolean proved) {
        if (perKg == null) {
            return "price not known";
        }
        var currency = result.brief().currency();
        var words = Figures.money(Figures.perPound(perKg)) + (currency.isEmpty() ? "" : " " + currency);
        return Boolean.TRUE.equals(proved) ? words : "at most " + words;
    }

    private void addCombined(List<Block> blocks) {
        var combined = result.combined();
        if (combined == null) {
            return;
        }
        var lead = result.cures().isEmpty() ? "Together these do" : "Without allowing anything, these do together";
        blocks.add(new Paragraph(lead + " (solved with; while the others stay, none can be left out or move less):"));
        blocks.add(
                new Points(combined.moves().stream().map(ConflictReport::change).toList()));
        blocks.add(new Paragraph(
                "Then the cheapest blend costs " + cost(combined.costPerKg(), combined.costProved()) + "/lb."));
    }

    /** A change in a line, with the number to write. */
    public static String change(Relaxation cure) {
        return cure.change() instanceof Move move
                ? cure.name() + ": from " + Figures.exactly(move.from(), move.unit()) + " to " + moved(move)
                : words(cure);
    }
}
