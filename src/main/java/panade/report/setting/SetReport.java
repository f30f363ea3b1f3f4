package panade.report.setting;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.ReportDocument;
import panade.result.setting.SetResult;
import panade.result.setting.SetResult.Amount;
import panade.result.setting.SetResult.Least;
import panade.result.setting.SetResult.Line;
import panade.result.setting.SetResult.Made;
import panade.result.setting.SetResult.Moved;
import panade.result.setting.SetResult.Touched;

/** Words what numbers that are tried move: told last, so that it is not scrolled away. */
public final class SetReport {
    private static final String TITLE = "What trying this moves, against the documents as written";

    /** Changes of less than this many grams are counted and not listed: no scale shows them. */
    private static final BigFraction FINEST = BigFraction.of(1, 100);

    private final SetResult set;
    private final String currency;

    private SetReport(SetResult set) {
        this.set = set;
        var stated = set.moved().get(0).currency();
        this.currency = stated.isEmpty() ? "" : " " + stated;
    }

    /** A report with a section of what is moved at its end. */
    public static ReportDocument under(ReportDocument report, SetResult set) {
        var blocks = new ArrayList<>(report.blocks());
        blocks.add(new Heading(TITLE));
        blocks.addAll(new SetReport(set).blocks());
        return new ReportDocument(report.title(), blocks);
    }

    /** What is moved alone, where the answer itself is no report. */
    public static ReportDocument of(SetResult set) {
        return new ReportDocument(TITLE, new SetReport(set).blocks());
    }

    private List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Points(set.tried().stream().map(this::words).toList()));
        boolean several = set.moved().size() > 1;
        for (var moved : set.moved()) {
            if (several) {
                blocks.add(new Paragraph(moved.what() + ":"));
            }
            add(blocks, moved);
        }
        return blocks;
    }

    private String words(Line line) {
        var from = line.from();
        var instead = from == null ? "" : " instead of " + from;
        return switch (line.of()) {
            case MIN -> line.what() + ": at least " + line.to() + instead + ".";
            case MAX -> line.what() + ": at most " + line.to() + instead + ".";
            case FIXED -> line.what() + ": exactly " + line.to() + instead + ".";
            case AVAILABLE ->
                line.what() + ": " + line.to() + " to be had" + (from == null ? " instead of any amount" : instead)
                        + ".";
            case PRICE ->
                line.what() + ": " + perLb(Objects.requireNonNull(line.perKg())) + currency + "/lb instead of "
                        + perLb(Objects.requireNonNull(line.fromPerKg())) + ".";
        };
    }

    private static String perLb(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private void add(List<Block> blocks, Moved moved) {
        var made = moved.made();
        if (made != null) {
            blocks.add(new Points(made(made)));
        }
        blocks.add(new Paragraph(verdict(moved)));
        var amounts = moved.amounts();
        if (amounts == null) {
            return;
        }
        addAmounts(blocks, moved, amounts);
        var touched = new ArrayList<String>();
        touched.addAll(touched("Now binding: ", moved.starts()));
        touched.addAll(touched("No longer binding: ", moved.stops()));
        if (touched.isEmpty()) {
            touched.add(amounts.isEmpty() ? "The blend stays the same." : "The same bounds bind.");
        }
        if (!amounts.isEmpty() && Boolean.FALSE.equals(moved.unique())) {
            touched.add("Other blends, or other suppliers' goods, cost exactly the same: compare costs, not amounts.");
        }
        blocks.add(new Points(touched));
    }

    private String verdict(Moved moved) {
        var was = moved.written();
        var is = moved.now();
        if (was.perKg() == null || is.perKg() == null) {
            return "As written " + state(was, moved) + "; now " + state(is, moved) + ".";
        }
        var change = is.perKg().subtract(was.perKg());
        return change.signum() == 0
                ? "The cheapest blend costs " + price(is.perKg(), moved) + " either way."
                : "The cheapest blend costs " + price(is.perKg(), moved) + " instead of " + perLb(was.perKg()) + ", "
                        + money(is.perKg()) + currency + "/kg instead of " + money(was.perKg()) + ": "
                        + size(change) + currency + "/lb " + moreOrLess(change) + ".";
    }

    private static String money(BigFraction perKg) {
        return Figures.money(perKg);
    }

    private String state(Least least, Moved moved) {
        var perKg = least.perKg();
        if (perKg != null) {
            return "the cheapest blend costs " + price(perKg, moved);
        }
        return least.reason() == null ? "no blend keeps every bound" : "nothing is decided (" + least.reason() + ")";
    }

    private String price(BigFraction perKg, Moved moved) {
        return perLb(perKg) + currency + (moved.cooked() ? " per cooked lb" : "/lb");
    }

    /** A change of money a pound; what is not nothing is not told as nothing. */
    private static String size(BigFraction perKg) {
        var text = perLb(perKg.abs());
        return new BigDecimal(text).signum() == 0 ? "less than 0.0001" : text;
    }

    private static String moreOrLess(BigFraction change) {
        return change.signum() < 0 ? "less" : "more";
    }

    private List<String> made(Made made) {
        var lines = new ArrayList<String>();
        lines.add(cost(made.fromPerKg(), made.perKg()));
        if (!made.breaks().isEmpty()) {
            lines.add("It breaks now: " + String.join(", ", made.breaks()) + ".");
        }
        if (!made.mends().isEmpty()) {
            lines.add("It no longer breaks: " + String.join(", ", made.mends()) + ".");
        }
        return lines;
    }

    private String cost(@Nullable BigFraction was, @Nullable BigFraction is) {
        if (was == null || is == null) {
            return "What the formula costs is not known.";
        }
        var change = is.subtract(was);
        return change.signum() == 0
                ? "The formula costs " + perLb(is) + currency + "/lb either way."
                : "The formula costs " + perLb(is) + currency + "/lb instead of " + perLb(was) + ": " + size(change)
                        + " " + moreOrLess(change) + ".";
    }

    private static void addAmounts(List<Block> blocks, Moved moved, List<Amount> amounts) {
        var seen = amounts.stream().filter(SetReport::isSeen).toList();
        if (!seen.isEmpty()) {
            blocks.add(table(moved, seen));
        }
        if (seen.size() < amounts.size()) {
            blocks.add(new Paragraph((seen.isEmpty() ? "Ingredients" : "Others") + " that change by less than 0.01 g: "
                    + (amounts.size() - seen.size()) + "."));
        }
    }

    private static Table table(Moved moved, List<Amount> seen) {
        return new Table(
                List.of(
                        new Column("In the " + moved.batch() + " batch", false),
                        new Column("grams as written", true),
                        new Column("grams now", true),
                        new Column("change", true)),
                seen.stream().map(SetReport::row).toList());
    }

    private static boolean isSeen(Amount amount) {
        return change(amount).abs().multiply(1000).compareTo(FINEST) >= 0;
    }

    private static BigFraction change(Amount amount) {
        return amount.kilograms().get(1).subtract(amount.kilograms().get(0));
    }

    private static List<String> row(Amount amount) {
        var change = change(amount);
        return List.of(
                amount.name(),
                grams(amount.kilograms().get(0)),
                grams(amount.kilograms().get(1)),
                (change.signum() > 0 ? "+" : "-") + Figures.grams(change.abs()));
    }

    private static String grams(BigFraction kilograms) {
        return kilograms.signum() == 0 ? "none" : Figures.grams(kilograms);
    }

    private static List<String> touched(String words, @Nullable List<Touched> bounds) {
        return bounds == null || bounds.isEmpty()
                ? List.of()
                : List.of(words
                        + bounds.stream().map(SetReport::name).distinct().collect(Collectors.joining("; ")) + ".");
    }

    private static String name(Touched touched) {
        return switch (touched.side()) {
            case MIN -> touched.name() + ", at its least";
            case MAX -> touched.name() + ", at its most";
            case FIXED -> touched.name();
        };
    }
}
