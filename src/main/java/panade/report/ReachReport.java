package panade.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Brief;
import panade.explain.Room.PropertyRoom;
import panade.explain.conflict.Move;
import panade.reach.ShelfTarget;
import panade.reach.Target;
import panade.reach.Target.PriceMove;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words whether a price can be reached, what must give, or what the spare money buys. */
public final class ReachReport {
    /** How many moves are told with what they do to the label. */
    private static final int LABELS = 5;

    private final Target target;
    private final Brief brief;
    private final Set<String> named;

    private ReachReport(Target target, Set<String> named) {
        this.target = target;
        this.brief = target.best().brief();
        this.named = named;
    }

    /**
     * The report on a target.
     *
     * @param named ids of the properties to tell when money is to spare
     */
    public static ReportDocument of(Target target, Set<String> named) {
        return new ReachReport(target, named).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph(
                "Proved in exact fractions; every change below was solved with. Costs are of ingredients alone."));
        var shelf = target.shelf();
        if (shelf != null) {
            blocks.add(new Heading("From the shelf back to the ingredients, per lb"));
            blocks.add(shelfTable(shelf));
        }
        if (target.isMet()) {
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
        return Remarks.under(
                new ReportDocument(brief.title() + ": can it cost " + money(target.targetPerKg()) + "/lb?", blocks),
                target.best().asked().remarks());
    }

    private String currency() {
        return brief.currency().isEmpty() ? "" : " " + brief.currency();
    }

    private static String money(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String verdict() {
        var best = "the cheapest blend costs " + money(target.best().blend().costPerKg()) + currency() + "/lb, ";
        var distance = money(target.gapPerKg().abs()) + currency() + "/lb ";
        return target.isMet()
                ? "Yes: " + best + distance + "below the target of " + money(target.targetPerKg()) + "."
                : "Not as it stands: " + best + distance + "above the target of " + money(target.targetPerKg()) + ".";
    }

    private static Table shelfTable(ShelfTarget shelf) {
        var rows = shelf.lines().stream()
                .map(line -> List.of(
                        words(line), line.taken().signum() == 0 ? "" : "-" + money(line.taken()), money(line.left())))
                .toList();
        return new Table(List.of(new Column("", false), new Column("off", true), new Column("left", true)), rows);
    }

    private static String words(ShelfTarget.Line line) {
        var part =
                line.part() == null ? "" : " " + Figures.significant(line.part().multiply(100), 3) + " %";
        return switch (line.kind()) {
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
        var rows = target.atTarget().stream()
                .filter(room -> named.contains(room.property()))
                .map(this::row)
                .toList();
        blocks.add(new Table(
                List.of(
                        new Column("Property", false),
                        new Column("now", true),
                        new Column("least", true),
                        new Column("most", true),
                        new Column("unit", false)),
                rows));
    }

    private List<String> row(PropertyRoom room) {
        var now = target.best().explanation().properties().stream()
                .filter(value -> value.property().equals(room.property()))
                .findFirst();
        return List.of(
                brief.set().property(room.property()).title(),
                now.map(value -> value.value() == null ? "" : Figures.significant(value.value(), 4))
                        .orElse(""),
                Figures.significant(room.min(), 4),
                Figures.significant(room.max(), 4),
                room.unit().symbol());
    }

    private void addMoves(List<Block> blocks) {
        blocks.add(new Heading("One bound alone: the least move that is enough"));
        var rows = target.moves().stream()
                .sorted(Comparator.comparing((Move move) -> move.to() == null)
                        .thenComparing(
                                ReachReport::part))
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
                to == null ? "" : ConflictReport.moved(move.from(), to, move.unit(), move.kept()),
                to == null ? "can't alone, brings " + money(move.costPerKg()) : "");
    }

    /** What the easiest moves do to the label. */
    private void addLabels(List<Block> blocks) {
        var points = target.moves().stream()
                .filter(move -> target.labels().containsKey(move))
                .sorted(Comparator.comparing(
                        ReachReport::part))
                .limit(LABELS)
                .map(move -> move.name() + ": "
                        + LabelWords.all(Objects.requireNonNull(target.labels().get(move))) + ".")
                .toList();
        if (!points.isEmpty()) {
            blocks.add(new Heading("What the easiest of these do to the label"));
            blocks.add(new Points(points));
        }
    }

    private void addPair(List<Block> blocks) {
        if (target.pair().isEmpty()) {
            boolean single = target.moves().stream().anyMatch(move -> move.to() != null);
            blocks.add(new Paragraph(
                    single
                            ? "No two bounds together were found that need less than one alone."
                            : "No two of the bounds that get furthest alone are enough together."));
            return;
        }
        var words = target.pair().stream()
                .map(move -> move.name() + " to "
                        + ConflictReport.moved(
                                move.from(), Objects.requireNonNull(move.to()), move.unit(), move.kept()))
                .toList();
        blocks.add(
                new Paragraph("Two together, each move counted as a part of its number: " + String.join(" and ", words)
                        + ", then " + money(target.pair().get(0).costPerKg()) + currency() + "/lb."));
    }

    private void addBatch(List<Block> blocks) {
        var batch = target.batch();
        if (batch != null) {
            blocks.add(new Paragraph("Without touching the recipe: batches of " + batch.text() + " instead of "
                    + brief.batch().text() + " spread the labour far enough."));
        }
    }

    private void addPrices(List<Block> blocks) {
        blocks.add(new Heading("One price alone, per lb as bought"));
        var rows = target.prices().stream()
                .sorted(Comparator.comparing((PriceMove price) -> price.to() == null)
                        .thenComparing(
                                PriceMove::costPerKg)
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
        if (!target.open().isEmpty()) {
            blocks.add(new Heading("Not decided in time"));
            blocks.add(new Points(target.open()));
        }
    }

    private List<String> row(PriceMove price) {
        var to = price.to();
        return List.of(
                brief.set().ingredient(price.ingredient()).name(),
                money(price.from()),
                to == null ? "" : Figures.moneyAtMost(Figures.perPound(to)),
                to == null ? "not even free: brings " + money(price.costPerKg()) : "");
    }
}
