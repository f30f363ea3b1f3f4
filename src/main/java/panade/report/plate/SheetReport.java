package panade.report.plate;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
import panade.quantity.Unit;
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
import panade.result.BatchResult;
import panade.result.BatchResult.Fail;
import panade.result.BatchResult.Line;
import panade.result.BatchResult.Planned;
import panade.result.BatchResult.Sheet;
import panade.result.BatchResult.Stage;
import panade.result.BuyResult;
import panade.result.BuyResult.Shortage;
import panade.result.RemarkLine;

/** Words what to weigh, stage by stage, on one sheet for the bench. */
public final class SheetReport {
    /** Stands where something is to be ticked off. */
    public static final String TICK = "[ ]";

    /** Stands where something is to be written in. */
    public static final String WRITE_HERE = "________";

    private static final Unit OUNCE = Unit.of("oz");
    private static final int OUNCES = 16;
    private static final BigFraction GRAMS = BigFraction.of(1000);

    private final Sheet sheet;

    private SheetReport(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The sheet. */
    public static ReportDocument of(BatchResult result) {
        return new SheetReport(result.sheet()).document(result.trial(), result.remarks());
    }

    private ReportDocument document(BatchResult.@Nullable Trial trial, List<RemarkLine> remarks) {
        var blocks = head();
        if (sheet.met() && !sheet.plainFails().isEmpty()) {
            blocks.add(new Paragraph("Each weight rounded on its own would break:"));
            blocks.add(new Points(
                    sheet.plainFails().stream().map(SheetReport::words).toList()));
            blocks.add(new Paragraph(moved()));
        }
        blocks.addAll(work());
        if (trial != null) {
            blocks.addAll(TrialBlanks.of(trial));
        }
        return Remarks.on(new ReportDocument(sheet.title() + ": " + sheet.batch() + " to weigh", blocks), remarks);
    }

    /** The sheets of a purchase plan, each a document; what runs short is told above the first. */
    public static List<ReportDocument> of(BuyResult result) {
        var documents = new ArrayList<ReportDocument>();
        Optional.ofNullable(result.shortages())
                .filter(shortages -> !shortages.isEmpty())
                .ifPresent(shortages -> documents.add(runShort(shortages)));
        Stream.ofNullable(result.sheets())
                .flatMap(List::stream)
                .map(SheetReport::of)
                .forEach(documents::add);
        return documents;
    }

    private static ReportDocument runShort(List<Shortage> shortages) {
        var points = shortages.stream()
                .map(missing -> during(missing.period()) + missing.name() + ", " + Figures.grams(missing.kilograms())
                        + " g more than there is")
                .toList();
        return new ReportDocument(
                "Weighed by the sheets below, these run short",
                List.of(
                        new Paragraph("Weights are rounded to the scale, and the plan uses these to the last gram:"
                                + " the last batch comes out as much smaller, or more has to be bought."),
                        new Points(points)));
    }

    /** The sheet of a product in a purchase plan, headed by how often it is to be made. */
    private static ReportDocument of(Planned planned) {
        var document = new SheetReport(planned.sheet()).document(null, planned.remarks());
        var blocks = new ArrayList<Block>();
        var times = Figures.significant(planned.batches(), 4);
        blocks.add(new Paragraph(planned.amount() + " of the plan are " + times
                + (times.equals("1") ? " batch." : " batches like this.")));
        blocks.addAll(document.blocks());
        return new ReportDocument(during(planned.period()) + document.title(), blocks);
    }

    private static String during(String period) {
        return period.isEmpty() ? "" : period + ": ";
    }

    /** The sheet alone: without its title and what rounding would have broken. */
    public static List<Block> bare(BatchResult result) {
        var report = new SheetReport(result.sheet());
        var blocks = report.head();
        blocks.addAll(report.work());
        return blocks;
    }

    /** What is filled in by hand at the top of a sheet. */
    public static Block toFillIn() {
        return new Paragraph("Date ____________  Made by ________________  Batch no. ____________");
    }

    /** The work of a sheet, stage by stage, with what to mind. */
    public static List<Block> work(Sheet sheet) {
        return new SheetReport(sheet).work();
    }

    private List<Block> head() {
        var blocks = new ArrayList<Block>();
        blocks.add(toFillIn());
        blocks.add(new Paragraph(verdict()));
        if (!sheet.met()) {
            blocks.add(new Points(sheet.fails().stream().map(SheetReport::words).toList()));
            blocks.add(new Paragraph(finer()));
        }
        if (sheet.endedEarly()) {
            blocks.add(new Paragraph(ended()));
        }
        return blocks;
    }

    private List<Block> work() {
        var blocks = new ArrayList<Block>();
        IntStream.range(0, sheet.stages().size())
                .forEach(i -> addStage(sheet.stages().get(i), i + 1, blocks));
        var leftOut = sheet.lines().stream()
                .filter(line -> line.grams().signum() == 0)
                .map(Line::name)
                .collect(Collectors.joining(", "));
        if (!leftOut.isEmpty()) {
            blocks.add(new Paragraph("Left out, too little for this scale: " + leftOut + "."));
        }
        blocks.add(new Paragraph(bands()));
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(Cautions.atTheBench(
                sheet.allergens().stated(), sheet.allergens().unknownFor())));
        return blocks;
    }

    /** What a pound costs as weighed. */
    public static String cost(Sheet sheet) {
        return Figures.money(Figures.perPound(sheet.costPerKg()))
                + (sheet.currency().isEmpty() ? "" : " " + sheet.currency()) + "/lb of ingredients";
    }

    private String verdict() {
        var cost = cost(sheet);
        if (sheet.met()) {
            return "Weighed like this, every bound is met (checked in exact fractions); " + cost + ".";
        }
        return sheet.isNear()
                ? "On this scale no weights were found that hit every fixed number. These come nearest and meet every"
                        + " other bound (checked in exact fractions); " + cost + ". Missed:"
                : "On this scale no weights were found that meet every bound. The nearest break:";
    }

    /** A limit that is broken, in words. */
    public static String words(Fail fail) {
        var reaches = fail.reaches();
        var unit = fail.unit().isEmpty() ? "" : " " + fail.unit();
        int digits = reaches == null ? 4 : Figures.digitsApart(reaches, fail.needs(), 4);
        var asked = fail.path().endsWith("/min") ? ", needs at least " : ", may be at most ";
        return fail.name() + ": comes to " + (reaches == null ? "nothing" : Figures.significant(reaches, digits)) + unit
                + (fail.fixed() ? ", is fixed at " : asked)
                + Figures.significant(fail.needs(), digits) + unit + (fail.fixed() ? missed(fail, unit) : "");
    }

    private static String missed(Fail fail, String unit) {
        var reaches = fail.reaches();
        if (reaches == null) {
            return "";
        }
        var by = reaches.subtract(fail.needs());
        return ": " + Figures.significant(by.abs(), 3) + unit + (by.signum() < 0 ? " too little" : " too much");
    }

    private String finer() {
        var fine = sheet.fineEnough();
        var advice =
                sheet.isNear() ? " Weigh by this sheet only if that much off will do." : " Do not weigh by this sheet.";
        return (fine == null
                        ? (sheet.endedEarly()
                                        ? "Whether a finer scale would do is not known; search again, or make a larger"
                                                + " batch"
                                        : "No finer scale that was tried was found to do; make a larger batch")
                                + (sheet.isNear() ? ", or give the fixed number a least and a most." : ".")
                        : "A scale that reads " + fine + " is fine enough for this batch.")
                + advice;
    }

    private String ended() {
        return "The search for weights ended before it was done: "
                + (sheet.met() ? "others may lie nearer the recipe." : "weights that meet every bound may exist.");
    }

    private String bands() {
        var words = sheet.met()
                ? " A weight alone may lie between its least and most before a bound breaks, all others as written."
                : " Between its least and most a weight alone breaks nothing more, all others as written.";
        boolean tight = sheet.lines().stream().anyMatch(line -> line.grams().signum() > 0 && line.isTight());
        return "Total " + both(sheet.total()) + "." + words
                + (tight ? " Where both are the same no other weight will do." : "");
    }

    private String moved() {
        var line = sheet.lines().stream()
                .filter(each -> each.grams().signum() > 0)
                .max(Comparator.comparing(Line::off, (a, b) -> a.abs().compareTo(b.abs())))
                .orElseThrow();
        var off = line.off();
        return "So weights are moved together by whole steps; furthest off is "
                + line.name() + ", by " + (off.signum() < 0 ? "-" : "+")
                + Figures.significant(off.abs().multiply(100), 2) + " %.";
    }

    private static void addStage(Stage stage, int number, List<Block> blocks) {
        blocks.add(new Heading(number + ". " + stage.title() + ": " + both(stage.total())));
        blocks.add(new Table(
                List.of(
                        new Column("Done", false),
                        new Column("Weigh", true),
                        new Column("", true),
                        new Column("Ingredient", false),
                        new Column("least", true),
                        new Column("most", true),
                        new Column("Lot", false)),
                stage.lines().stream().map(SheetReport::row).toList()));
        if (!stage.method().isEmpty()) {
            blocks.add(new Points(stage.method()));
        }
    }

    private static List<String> row(Line line) {
        var most = line.highest();
        return List.of(
                TICK,
                weight(line),
                line.inOunces() ? Figures.grams(kilograms(line.grams())) + " g" : pounds(line.grams()),
                line.name(),
                limit(line, line.lowest(), RoundingMode.CEILING),
                most == null ? "any" : limit(line, most, RoundingMode.FLOOR),
                WRITE_HERE);
    }

    private static BigFraction kilograms(BigFraction grams) {
        return grams.divide(GRAMS);
    }

    private static BigFraction ounces(BigFraction grams) {
        return OUNCE.fromBase(kilograms(grams));
    }

    /** A weight in the unit that the line's scale shows. */
    private static BigFraction shown(Line line, BigFraction grams) {
        return line.inOunces() ? ounces(grams) : grams;
    }

    /** Digits after the point that a step of the scale needs, three at most. */
    private static int places(Line line) {
        int places = 0;
        var scaled = shown(line, line.stepGrams());
        while (places < 3 && !scaled.getDenominator().abs().equals(BigInteger.ONE)) {
            scaled = scaled.multiply(10);
            places++;
        }
        return places;
    }

    private static String weight(Line line) {
        return Decimal.round(shown(line, line.grams()), places(line)).toPlainString()
                + (line.inOunces() ? " oz" : " g");
    }

    /** A least or most weight, rounded to the safe side on a tenth of the step. */
    private static String limit(Line line, BigFraction grams, RoundingMode safe) {
        return shown(line, grams).bigDecimalValue(places(line) + 1, safe).toPlainString();
    }

    /** Pounds and ounces, to a hundredth of an ounce. */
    private static String pounds(BigFraction grams) {
        var parts = Decimal.round(ounces(grams), 2).divideAndRemainder(BigDecimal.valueOf(OUNCES));
        var rest = parts[1].toPlainString() + " oz";
        return parts[0].signum() == 0 ? rest : parts[0].toBigInteger() + " lb " + rest;
    }

    private static String both(BigFraction grams) {
        return Decimal.round(grams, 1).stripTrailingZeros().toPlainString() + " g (" + pounds(grams) + ")";
    }
}
