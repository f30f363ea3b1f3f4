package panade.report.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
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
import panade.result.trial.TriangleResult;
import panade.result.trial.TriangleResult.Found;
import panade.result.trial.TriangleResult.Outcome;
import panade.result.trial.TriangleResult.Power;
import panade.result.trial.TriangleResult.Serving;

/** Words a triangle test: first what its answers mean, then the sheets. */
public final class TriangleReport {
    private static final String BLANK = "_______";

    private final TriangleResult result;

    private TriangleReport(TriangleResult result) {
        this.result = result;
    }

    /** The report. */
    public static ReportDocument of(TriangleResult result) {
        var document =
                new ReportDocument("Triangle test: do A and B taste different?", new TriangleReport(result).blocks());
        return Remarks.on(document, result.remarks());
    }

    private List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Points(List.of("A: " + result.a(), "B: " + result.b())));
        if (result.same()) {
            blocks.add(new Paragraph("A and B weigh the same. Whatever comes out is chance, or how they were made."));
        }
        var found = result.found();
        if (found != null) {
            blocks.add(new Paragraph(found(found)));
        }
        blocks.add(new Paragraph(rule()));
        addMeaning(blocks);
        addSheets(blocks);
        blocks.add(new Heading("Before anybody tastes"));
        var points = new ArrayList<>(Cautions.forTasters(result.allergens(), result.allergensNotKnown()));
        points.add("Cook A and B alike, and serve them alike: same size, same warmth, same cup, water in between. Each"
                + " person counts once.");
        blocks.add(new Points(points));
        return blocks;
    }

    private String found(Found found) {
        var words =
                found.right() + " of " + result.tasters() + " were right. Guessing alone gives that many or more in "
                        + Figures.percent(found.p()) + " % of tests: ";
        var apart = found.tellApartAtMost().equals(BigFraction.ONE)
                ? ""
                : " At most " + whole(found.tellApartAtMost()) + " % of people can tell them apart ("
                        + Figures.significant(
                                BigFraction.ONE.subtract(result.risk()).multiply(100), 4) + " % sure).";
        return words
                + (found.different()
                        ? "a difference is shown."
                        : "no difference is shown, which is not the same as none.")
                + apart;
    }

    private static String whole(BigFraction share) {
        return Figures.significant(share.multiply(100), 3);
    }

    private String rule() {
        var each = "Each of the " + result.tasters() + " tasters gets three cups, two alike, says which is the odd one,"
                + " and guesses when unsure. ";
        var least = result.leastRight();
        if (least == null) {
            return each + "That is too few: even if all were right, guessing would give it more often than in " + risk()
                    + " % of tests.";
        }
        return each + "If " + least + " or more are right, a difference is shown; fewer show nothing.";
    }

    private String risk() {
        return Figures.significant(result.risk().multiply(100), 4);
    }

    private void addMeaning(List<Block> blocks) {
        blocks.add(new Heading("What the answers mean"));
        blocks.add(new Table(
                List.of(
                        new Column("Right", true),
                        new Column("by guessing, as many or more: %", true),
                        new Column("", false)),
                result.outcomes().stream().map(TriangleReport::row).toList()));
        blocks.add(new Paragraph(
                "A difference counts as shown where guessing gives as much in at most " + risk() + " % of tests."));
        blocks.add(new Heading("How much " + result.tasters() + " tasters notice"));
        blocks.add(new Table(
                List.of(
                        new Column("Can tell them apart, % of people", true),
                        new Column("found, % of tests", true),
                        new Column("tasters needed to find it in 80 %", true)),
                result.power().stream().map(TriangleReport::row).toList()));
    }

    private static List<String> row(Outcome outcome) {
        return List.of(
                String.valueOf(outcome.right()),
                Figures.percent(outcome.p()),
                outcome.different() ? "a difference" : "nothing shown");
    }

    private static List<String> row(Power power) {
        var needed = power.tastersNeeded();
        return List.of(
                whole(power.tellApart()), found(power.found()), needed == null ? "over 300" : String.valueOf(needed));
    }

    /** What is not quite all is not told as all. */
    private static String found(BigFraction share) {
        var tenths = Figures.tenth(share.multiply(100));
        return tenths.equals("100.0") && !share.equals(BigFraction.ONE) ? "over 99.9" : tenths;
    }

    private void addSheets(List<Block> blocks) {
        blocks.add(new Heading("For whoever fills the cups: hide it from the tasters"));
        blocks.add(new Paragraph(
                "Cups to fill: " + cups("A") + " with A, " + cups("B") + " with B. Set them in this order;" + " --seed "
                        + result.seed() + " gives this sheet again, another seed another one."));
        blocks.add(new Table(
                List.of(
                        new Column("Taster", true),
                        new Column("left", false),
                        new Column("middle", false),
                        new Column("right", false),
                        new Column("odd one", true)),
                result.servings().stream().map(TriangleReport::row).toList()));
        blocks.add(new Heading("For the tasters: two cups hold the same; which is the odd one?"));
        blocks.add(new Table(
                List.of(
                        new Column("Taster", true),
                        new Column("left", true),
                        new Column("middle", true),
                        new Column("right", true),
                        new Column("odd one", false)),
                result.servings().stream().map(TriangleReport::blank).toList()));
    }

    private int cups(String sample) {
        return result.servings().stream()
                .mapToInt(serving -> Collections.frequency(serving.cups(), sample))
                .sum();
    }

    private static List<String> row(Serving serving) {
        var row = new ArrayList<String>();
        row.add(String.valueOf(serving.taster()));
        IntStream.range(0, serving.codes().size())
                .forEach(i ->
                        row.add(serving.codes().get(i) + " " + serving.cups().get(i)));
        row.add(String.valueOf(serving.odd()));
        return row;
    }

    private static List<String> blank(Serving serving) {
        var row = new ArrayList<String>();
        row.add(String.valueOf(serving.taster()));
        serving.codes().forEach(code -> row.add(String.valueOf(code)));
        row.add(BLANK);
        return row;
    }
}
