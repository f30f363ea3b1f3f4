package panade.report.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import panade.report.plate.StudyReport;
import panade.result.StudyResult.Broken;
import panade.result.StudyResult.Cost;
import panade.result.formula.MadeStudyResult;
import panade.result.formula.MadeStudyResult.Contents;

/** Words how what is made fares when prices and what its ingredients hold vary. */
public final class MadeStudyReport {
    private final MadeStudyResult study;

    private MadeStudyReport(MadeStudyResult study) {
        this.study = study;
    }

    /** The report. */
    public static ReportDocument of(MadeStudyResult study) {
        return new MadeStudyReport(study).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        addCosts(blocks);
        blocks.add(new Heading("How often it stays inside its bounds"));
        addContents(blocks);
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(cautions()));
        return Remarks.on(
                new ReportDocument(
                        study.title() + ": prices drawn " + count(study.draws()) + " times, seed " + study.seed(),
                        blocks),
                study.remarks());
    }

    private void addCosts(List<Block> blocks) {
        var cost = study.cost();
        if (cost == null) {
            blocks.add(new Paragraph(
                    "What it costs is not known: nobody sells " + String.join(", ", study.unsold()) + "."));
            return;
        }
        blocks.add(new Paragraph(
                "Made as it is, it costs between " + level(cost, 1) + " and " + level(cost, 3) + currency()
                        + "/lb half the time, between " + level(cost, 0) + " and " + level(cost, 4)
                        + " nine times in ten. Today: "
                        + money(cost.todayPerKg()) + ". Lowest of all draws " + money(cost.lowestPerKg()) + ", highest "
                        + money(cost.highestPerKg()) + ", mean " + money(cost.meanPerKg()) + ", standard deviation "
                        + money(cost.deviationPerKg()) + "."));
        var target = study.target();
        if (target != null) {
            blocks.add(new Paragraph("It costs no more than the target of " + money(target.perKg()) + currency()
                    + "/lb in " + Figures.percentOf(target.metIn(), study.draws()) + " % of the draws."));
        }
    }

    private void addContents(List<Block> blocks) {
        blocks.add(new Paragraph(
                study.brokenToday().isEmpty()
                        ? "At the values as stated it keeps every bound that could be measured."
                        : "At the values as stated it breaks: " + String.join(", ", study.brokenToday()) + "."));
        var contents = study.contents();
        if (contents == null) {
            blocks.add(new Paragraph(
                    "What it holds was not drawn: no ingredient in it states a spread, or --compositions" + " is 0."));
            return;
        }
        blocks.add(new Paragraph("Its ingredients state a spread for " + contents.values()
                + (contents.values() == 1 ? " value" : " values") + ". Drawn " + count(contents.draws())
                + " times, it keeps every bound in " + Figures.percentOf(contents.inside(), contents.draws())
                + " % of the draws."));
        if (!contents.broken().isEmpty()) {
            blocks.add(new Table(
                    List.of(
                            new Column("It breaks", false),
                            new Column("Side", false),
                            new Column("% of draws", true),
                            new Column("Asks", true),
                            new Column("1 in 20 comes to", true)),
                    contents.broken().stream().map(each -> row(each, contents)).toList()));
        }
    }

    private static List<String> row(Broken broken, Contents contents) {
        var value = broken.oneInTwenty();
        return List.of(
                broken.name(),
                StudyReport.side(broken.binding()),
                Figures.percentOf(broken.draws(), contents.draws()),
                Figures.with(broken.asks(), broken.unit()),
                value == null ? "" : Figures.with(value, broken.unit()));
    }

    private List<String> cautions() {
        var lines = new ArrayList<String>();
        lines.add("Nothing is solved here: every draw is an exact sum of what is weighed. Each price was drawn evenly"
                + " between its spread below and above today's, each on its own.");
        if (study.contents() != null) {
            lines.add("What ingredients hold was drawn from a normal distribution around the set's value, each value on"
                    + " its own; values that state no spread were kept. \"1 in 20 comes to\": in one draw of twenty it is"
                    + " that or further off.");
        }
        return lines;
    }

    private static String count(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    private static String level(Cost cost, int index) {
        return money(cost.levels().get(index).perKg());
    }

    private static String money(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String currency() {
        return study.currency().isEmpty() ? "" : " " + study.currency();
    }
}
