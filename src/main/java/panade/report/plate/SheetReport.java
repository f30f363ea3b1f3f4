package panade.report.plate;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.bench.BatchSheet;
import panade.bench.BatchSheet.Line;
import panade.bench.PlannedBench;
import panade.bench.PlannedSheet;
import panade.domain.Brief;
import panade.domain.Stage;
import panade.quantity.Decimal;
import panade.quantity.Quantity;
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

/** Words what to weigh, stage by stage, on one sheet for the bench. */
public final class SheetReport {
    /** Stands where something is to be ticked off. */
    public static final String TICK = "[ ]";

    /** Stands where something is to be written in. */
    public static final String WRITE_HERE = "________";

    private static final Unit OUNCE = Unit.of("oz");
    private static final int OUNCES = 16;

    private final BatchSheet sheet;
    private final Brief brief;

    private SheetReport(BatchSheet sheet) {
        this.sheet = sheet;
        this.brief = sheet.brief();
    }

    /** The sheet. */
    public static ReportDocument of(BatchSheet sheet) {
        return new SheetReport(sheet).document();
    }

    private ReportDocument document() {
        var blocks = head();
        if (sheet.isMet() && !sheet.plainFails().isEmpty()) {
            blocks.add(new Paragraph("Each weight rounded on its own would break:"));
            blocks.add(new Points(
                    sheet.plainFails().stream().map(SheetReport::words).toList()));
            blocks.add(new Paragraph(moved()));
        }
        blocks.addAll(work());
        return Remarks.under(
                new ReportDocument(brief.title() + ": " + brief.batch().text() + " to weigh", blocks), brief.remarks());
    }

    /** The sheets of a purchase plan, each a document; what runs short is told above the first. */
    public static List<ReportDocument> of(PlannedBench bench) {
        var documents = new ArrayList<ReportDocument>();
        if (!bench.shortages().isEmpty()) {
            var points = bench.shortages().stream()
                    .map(missing -> (missing.period().isEmpty() ? "" : missing.period() + ": ") + missing.name() + ", "
                            + Figures.grams(missing.kilograms()) + " g more than there is")
                    .toList();
            documents.add(new ReportDocument(
                    "Weighed by the sheets below, these run short",
                    List.of(
                            new Paragraph("Weights are rounded to the scale, and the plan uses these to the last gram:"
                                    + " the last batch comes out as much smaller, or more has to be bought."),
                            new Points(points))));
        }
        bench.sheets().forEach(planned -> documents.add(of(planned)));
        return documents;
    }

    /** The sheet of a product in a purchase plan, headed by how often it is to be made. */
    private static ReportDocument of(PlannedSheet planned) {
        var report = new SheetReport(planned.sheet());
        var document = report.document();
        var blocks = new ArrayList<Block>();
        var times = Figures.significant(planned.batches(), 4);
        blocks.add(new Paragraph(planned.amount() + " of the plan are " + times
                + (times.equals("1") ? " batch." : " batches like this.")));
        blocks.addAll(document.blocks());
        var when = planned.period().isEmpty() ? "" : planned.period() + ": ";
        return new ReportDocument(when + document.title(), blocks);
    }

    /** The sheet alone: without its title and what rounding would have broken. */
    public static List<Block> bare(BatchSheet sheet) {
        var report = new SheetReport(sheet);
        var blocks = report.head();
        blocks.addAll(report.work());
        return blocks;
    }

    private List<Block> head() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph("Date ____________  Made by ________________  Batch no. ____________"));
        blocks.add(new Paragraph(verdict()));
        if (!sheet.isMet()) {
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
        int number = 1;
        for (var stage : brief.stages()) {
            var lines = sheet.lines().stream()
                    .filter(line -> line.use().stage().equals(stage.id())
                            && line.weight().signum() > 0)
                    .toList();
            if (!lines.isEmpty()) {
                addStage(stage, lines, number++, blocks);
            }
        }
        if (!sheet.leftOut().isEmpty()) {
            var names = sheet.leftOut().stream()
                    .map(line -> brief.set().ingredient(line.use().ingredient()).name())
                    .toList();
            blocks.add(new Paragraph("Left out, too little for this scale: " + String.join(", ", names) + "."));
        }
        blocks.add(new Paragraph(bands()));
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(Cautions.atTheBench(brief, sheet.weighed())));
        return blocks;
    }

    private String verdict() {
        var cost = Figures.money(Figures.perPound(sheet.weighed().rawCostPerKg()))
                + (brief.currency().isEmpty() ? "" : " " + brief.currency()) + "/lb of ingredients";
        if (sheet.isMet()) {
            return "Weighed like this, every bound is met (checked in exact fractions); " + cost + ".";
        }
        return isNear()
                ? "On this scale no weights were found that hit every fixed number. These come nearest and meet every"
                        + " other bound (checked in exact fractions); " + cost + ". Missed:"
                : "On this scale no weights were found that meet every bound. The nearest break:";
    }

    /** Whether only fixed numbers are missed. */
    private boolean isNear() {
        return sheet.fails().stream().allMatch(BatchSheet.Fail::fixed);
    }

    private static String words(BatchSheet.Fail fail) {
        var reaches = fail.reaches();
        var unit = fail.unit().symbol().isEmpty() ? "" : " " + fail.unit().symbol();
        int digits = reaches == null ? 4 : Figures.digitsApart(reaches, fail.needs(), 4);
        var asked = fail.path().endsWith("/min") ? ", needs at least " : ", may be at most ";
        return fail.name() + ": comes to " + (reaches == null ? "nothing" : Figures.significant(reaches, digits)) + unit
                + (fail.fixed() ? ", is fixed at " : asked)
                + Figures.significant(fail.needs(), digits) + unit + (fail.fixed() ? missed(fail, unit) : "");
    }

    private static String missed(BatchSheet.Fail fail, String unit) {
        var reaches = fail.reaches();
        if (reaches == null) {
            return "";
        }
        var by = reaches.subtract(fail.needs());
        return ": " + Figures.significant(by.abs(), 3) + unit + (by.signum() < 0 ? " too little" : " too much");
    }

    private String finer() {
        var fine = sheet.fineEnough();
        var advice = isNear() ? " Weigh by this sheet only if that much off will do." : " Do not weigh by this sheet.";
        return (fine == null
                        ? (sheet.endedEarly()
                                        ? "Whether a finer scale would do is not known; search again, or make a larger"
                                                + " batch"
                                        : "No finer scale that was tried was found to do; make a larger batch")
                                + (isNear() ? ", or give the fixed number a least and a most." : ".")
                        : "A scale that reads " + fine.text() + " is fine enough for this batch.")
                + advice;
    }

    private String ended() {
        return "The search for weights ended before it was done: "
                + (sheet.isMet() ? "others may lie nearer the recipe." : "weights that meet every bound may exist.");
    }

    private String bands() {
        var words = sheet.isMet()
                ? " A weight alone may lie between its least and most before a bound breaks, all others as written."
                : " Between its least and most a weight alone breaks nothing more, all others as written.";
        boolean tight = sheet.lines().stream().anyMatch(line -> line.weight().signum() > 0 && line.isTight());
        return "Total " + both(sheet.total()) + "." + words
                + (tight ? " Where both are the same no other weight will do." : "");
    }

    private String moved() {
        var line = sheet.furthestOff();
        var off = line.off();
        return "So weights are moved together by whole steps; furthest off is "
                + brief.set().ingredient(line.use().ingredient()).name() + ", by " + (off.signum() < 0 ? "-" : "+")
                + Figures.significant(off.abs().multiply(100), 2) + " %.";
    }

    private void addStage(Stage stage, List<Line> lines, int number, List<Block> blocks) {
        var total = lines.stream().map(Line::weight).reduce(BigFraction.ZERO, BigFraction::add);
        blocks.add(new Heading(number + ". " + stage.title() + ": " + both(total)));
        blocks.add(new Table(
                List.of(
                        new Column("Done", false),
                        new Column("Weigh", true),
                        new Column("", true),
                        new Column("Ingredient", false),
                        new Column("least", true),
                        new Column("most", true),
                        new Column("Lot", false)),
                lines.stream().map(this::row).toList()));
        if (!stage.method().isEmpty()) {
            blocks.add(new Points(stage.method()));
        }
    }

    private List<String> row(Line line) {
        boolean inOunces = isPound(line.step().unit());
        var most = line.most();
        return List.of(
                TICK,
                inOunces ? ounces(line.weight(), line.step()) : grams(line.weight(), line.step()),
                inOunces ? Figures.grams(line.weight()) + " g" : pounds(line.weight()),
                brief.set().ingredient(line.use().ingredient()).name(),
                bound(line, line.least(), true),
                most == null ? "any" : bound(line, most, false),
                WRITE_HERE);
    }

    private static boolean isPound(Unit unit) {
        return unit.equals(OUNCE) || unit.equals(Unit.POUND);
    }

    private static String grams(BigFraction kilograms, Quantity step) {
        return Decimal.round(kilograms.multiply(1000), places(step.base().multiply(1000)))
                        .toPlainString() + " g";
    }

    private static String ounces(BigFraction kilograms, Quantity step) {
        return Decimal.round(OUNCE.fromBase(kilograms), places(OUNCE.fromBase(step.base())))
                        .toPlainString() + " oz";
    }

    /** Digits after the point that a step needs, three at most. */
    private static int places(BigFraction step) {
        int places = 0;
        var scaled = step;
        while (places < 3 && !scaled.getDenominator().abs().equals(BigInteger.ONE)) {
            scaled = scaled.multiply(10);
            places++;
        }
        return places;
    }

    /** A least or most weight, rounded to the safe side on a tenth of the step. */
    private static String bound(Line line, @Nullable BigFraction kilograms, boolean least) {
        boolean inOunces = isPound(line.step().unit());
        var unit = inOunces ? OUNCE : Unit.of("g");
        var number = unit.fromBase(kilograms == null ? BigFraction.ZERO : kilograms);
        int places = places(unit.fromBase(line.step().base())) + 1;
        var rounding = least ? RoundingMode.CEILING : RoundingMode.FLOOR;
        return new BigDecimal(number.getNumerator())
                .divide(new BigDecimal(number.getDenominator()), places, rounding)
                .toPlainString();
    }

    /** Pounds and ounces, to a hundredth of an ounce. */
    private static String pounds(BigFraction kilograms) {
        var ounces = Decimal.round(OUNCE.fromBase(kilograms), 2);
        var parts = ounces.divideAndRemainder(BigDecimal.valueOf(OUNCES));
        var rest = parts[1].toPlainString() + " oz";
        return parts[0].signum() == 0 ? rest : parts[0].toBigInteger() + " lb " + rest;
    }

    private static String both(BigFraction kilograms) {
        var grams =
                Decimal.round(kilograms.multiply(1000), 1).stripTrailingZeros().toPlainString();
        return grams + " g (" + pounds(kilograms) + ")";
    }
}
