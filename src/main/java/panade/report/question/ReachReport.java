package panade.report.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.BriefFacts;
import panade.result.ReachResult;
import panade.result.ReachResult.Move;
import panade.result.ReachResult.PriceMove;
import panade.result.ReachResult.PropertyRange;
import panade.result.ReachResult.ShelfLine;

/** Words whether a price can be reached, what must give, or what the spare money buys. */
public final class ReachReport {
    /** How many moves are told with what they do to the label. */
    private static final int LABELS = 5;

    private final ReachResult result;
    private final BriefFacts brief;

    private ReachReport(ReachResult result) {
        this.result = result;
        this.brief = result.best().brief();
    }

    /** The report. */
    public static ReportDocument of(ReachResult result) {
        return new ReachReport(result).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph(
                "Proved in exact fractions; every change below was solved with. Costs are of ingredients alone."));
        var shelf = result.shelf();
        if (shelf != null) {
            blocks.add(new Heading("From the shelf back to the ingredients, per lb"));
            blocks.add(shelfTable(shelf));
        }
        if (result.met()) {
            addBought(blocks);
        } else {
            addMoves(blocks);
            addLabels(blocks);
            addPair(blocks);
            addBatch(blocks);
            addPrices(blocks);
            addOpen(blocks);
        }
        if (!brief.notes().isEmpty()) {
            blocks.add(new Points(brief.notes()));
        }
        return Remarks.on(
                new ReportDocument(
                        brief.title() + ": can it cost " + money(result.target().perKg()) + "/lb?", blocks),
                result.remarks());
    }

    private String currency() {
        return brief.currency().isEmpty() ? "" : " " + brief.currency();
    }

    private static String money(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String verdict() {
        var best = "the cheapest blend costs " + money(result.best().cost().perKg()) + currency() + "/lb, ";
        var distance = money(result.gapPerKg().abs()) + currency() + "/lb ";
        return result.met()
                ? "Yes: " + best + distance + "below the target of "
                        + money(result.target().perKg()) + "."
                : "Not as it stands: " + best + distance + "above the target of "
                        + money(result.target().perKg()) + ".";
    }

    private static Table shelfTable(List<ShelfLine> shelf) {
        var rows = shelf.stream()
                .map(line -> List.of(
                        words(line),
                        line.takenPerKg().signum() == 0 ? "" : "-" + money(line.takenPerKg()),
                        money(line.leftPerKg())))
                .toList();
        return new Table(List.of(new Column("", false), new Column("off", true), new Column("left", true)), rows);
    }

    private static String words(ShelfLine line) {
        var part =
                line.part() == null ? "" : " " + Figures.significant(line.part().multiply(100), 3) + " %";
        return switch (line.line()) {
            case SHELF_PRICE -> "price on the shelf";
            case MARGIN -> "margin on that price," + part;
            case LABOUR -> "labour at this batch size";
            case PACKAGING -> "packaging";
            case OVERHEAD -> "overhead";
            case PROCESS_LOSS -> "lost in making," + part + ": left for ingredients";
        };
    }

    private void addBought(List<Block> blocks) {
        blocks.add(new Heading("What the money to spare could buy, each on its own"));
        var rows = result.ranges().stream().map(ReachReport::row).toList();
        blocks.add(new Table(
                List.of(
                        new Column("Property", false),
                        new Column("now", true),
                        new Column("least", true),
                        new Column("most", true),
                        new Column("unit", false)),
                rows));
    }

    private static List<String> row(PropertyRange range) {
        return List.of(
                range.title(),
                range.now() == null ? "" : Figures.significant(range.now(), 4),
                Figures.significant(range.least(), 4),
                Figures.significant(range.most(), 4),
                range.unit());
    }

    private void addMoves(List<Block> blocks) {
        blocks.add(new Heading("One bound alone: the least move that is enough"));
        var rows = result.moves().stream()
                .sorted(Comparator.comparing((Move move) -> move.to() == null).thenComparing(ReachReport::part))
                .map(this::row)
                .toList();
        blocks.add(
                rows.isEmpty()
                        ? new Paragraph("No bound holds the cost up: only prices can bring it down.")
                        : new Table(
                                List.of(
                                        new Column("Bound", false),
                                        new Column("now", true),
                                        new Column("enough", true),
                                        new Column("", false)),
                                rows));
    }

    /** How much of a number must move; of bounds that cannot do it alone, how much cost is left. */
    private static BigFraction part(Move move) {
        if (move.to() == null) {
            return move.costPerKg();
        }
        var moved = move.to().subtract(move.from()).abs();
        return move.from().signum() == 0 ? moved : moved.divide(move.from().abs());
    }

    private List<String> row(Move move) {
        var to = move.to();
        return List.of(
                move.name(),
                Figures.exactly(move.from(), move.unit()),
                to == null ? "" : moved(move, to),
                to == null ? "can't alone, brings " + money(move.costPerKg()) : "");
    }

    private static String moved(Move move, BigFraction to) {
        return Figures.moved(move.from(), to, move.unit(), move.kept(), move.keptUnit());
    }

    /** What the easiest moves do to the label. */
    private void addLabels(List<Block> blocks) {
        var points = result.moves().stream()
                .filter(move -> move.label() != null)
                .sorted(Comparator.comparing(ReachReport::part))
                .limit(LABELS)
                .map(move -> move.name() + ": " + LabelWords.all(Objects.requireNonNull(move.label())) + ".")
                .toList();
        if (!points.isEmpty()) {
            blocks.add(new Heading("What the easiest of these do to the label"));
            blocks.add(new Points(points));
        }
    }

    private void addPair(List<Block> blocks) {
        if (result.pair().isEmpty()) {
            boolean single = result.moves().stream().anyMatch(move -> move.to() != null);
            blocks.add(new Paragraph(
                    single
                            ? "No two bounds together were found that need less than one alone."
                            : "No two of the bounds that get furthest alone are enough together."));
            return;
        }
        var words = result.pair().stream()
                .map(move -> move.name() + " to " + moved(move, Objects.requireNonNull(move.to())))
                .toList();
        blocks.add(
                new Paragraph("Two together, each move counted as a part of its number: " + String.join(" and ", words)
                        + ", then " + money(result.pair().get(0).costPerKg()) + currency() + "/lb."));
    }

    private void addBatch(List<Block> blocks) {
        var batch = result.batch();
        if (batch != null) {
            blocks.add(new Paragraph("Without touching the recipe: batches of " + batch + " instead of " + brief.batch()
                    + " spread the labour far enough."));
        }
    }

    private void addPrices(List<Block> blocks) {
        blocks.add(new Heading("One price alone, per lb as bought"));
        var rows = result.prices().stream()
                .sorted(Comparator.comparing((PriceMove price) -> price.to() == null)
                        .thenComparing(PriceMove::costPerKg)
                        .thenComparing(PriceMove::ingredient))
                .map(this::row)
                .toList();
        blocks.add(new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("now", true),
                        new Column("enough", true),
                        new Column("", false)),
                rows));
    }

    private void addOpen(List<Block> blocks) {
        if (!result.undecided().isEmpty()) {
            blocks.add(new Heading("Not decided in time"));
            blocks.add(new Points(result.undecided()));
        }
    }

    private List<String> row(PriceMove price) {
        var to = price.to();
        return List.of(
                price.name(),
                money(price.from()),
                to == null ? "" : Figures.moneyAtMost(Figures.perPound(to)),
                to == null ? "not even free: brings " + money(price.costPerKg()) : "");
    }
}
