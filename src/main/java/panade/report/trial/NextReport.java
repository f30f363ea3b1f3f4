package panade.report.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.quantity.Decimal;
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
import panade.result.trial.NextResult;
import panade.result.trial.NextResult.LeverRange;
import panade.result.trial.NextResult.Line;
import panade.result.trial.NextResult.Measured;
import panade.result.trial.NextResult.Mixing;
import panade.result.trial.NextResult.Need;

/** Words what to mix next: the plan first, then a sheet for each mixing. */
public final class NextReport {
    private static final String WRITE_HERE = "________";
    private static final int DIGITS = 4;
    private static final BigFraction CENTS = BigFraction.of(100);

    private static final Block KEPT =
            new Paragraph("Every mixing below keeps every bound of the brief, weighed as written (checked in exact"
                    + " fractions); all else in it is as cheap as its levers allow.");

    private final NextResult result;
    private final String money;

    private NextReport(NextResult result) {
        this.result = result;
        this.money = result.currency().isEmpty() ? "" : " " + result.currency();
    }

    /** The report. */
    public static ReportDocument of(NextResult result) {
        var document = new ReportDocument(result.title() + ": what to mix next", new NextReport(result).blocks());
        return Remarks.on(document, result.remarks());
    }

    private List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(stands()));
        blocks.add(new Paragraph(worth()));
        blocks.add(new Heading("What to mix, in this order"));
        blocks.add(plan());
        blocks.add(new Points(reasons()));
        blocks.add(new Heading("What the levers can be"));
        blocks.add(new Table(
                List.of(new Column("Lever", false), new Column("least", true), new Column("most", true)),
                result.levers().stream().map(NextReport::row).toList()));
        if (result.trials().stream().allMatch(each -> each.broken().isEmpty())) {
            blocks.add(KEPT);
        }
        result.trials().forEach(mixing -> addSheet(mixing, blocks));
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(Cautions.atTheBench(
                result.allergens().stated(), result.allergens().notKnown())));
        return blocks;
    }

    private String stands() {
        var cost = Figures.money(Figures.perPound(result.costPerKg())) + money + "/lb";
        if (result.open() != null || result.needs().isEmpty()) {
            return "The cheapest blend of the brief costs " + cost + ", ingredients only.";
        }
        return "The cheapest blend that is " + share(result.sure()) + " % sure of "
                + result.needs().stream().map(NextReport::words).collect(Collectors.joining(" and "))
                + " in the next batch" + (result.needs().size() > 1 ? ", each on its own," : "") + " costs " + cost
                + ", ingredients only.";
    }

    private static String words(Need need) {
        return need.response()
                + (need.side().equals("min") ? " at least " : " at most ")
                + Figures.with(need.number(), need.unit());
    }

    private static String share(BigFraction share) {
        return Figures.significant(share.multiply(100), DIGITS);
    }

    private String worth() {
        var open = result.open();
        if (open != null) {
            return open + " The mixings below are chosen to learn most.";
        }
        if (result.done()) {
            return "Stop here: " + noGain() + " What is left is to make the cheapest blend and see.";
        }
        var monthly = result.perMonth() == null
                ? ""
                : ", " + Figures.cash(Decimal.of(result.perMonth())) + money + " a month at " + result.monthly();
        return "Knowing how they come out could free about " + cents(result.together()) + " cents a pound" + monthly
                + ", if they come out as predicted: so much less need be kept in hand.";
    }

    private String noGain() {
        var most = result.most();
        return most == null || most.signum() == 0
                ? "what is asked of the measurements does not hold the cost up, so no mixing could free anything."
                : "no mixing could free more than " + cents(most) + " cent a pound, which is less than 0.1.";
    }

    private static String cents(@Nullable BigDecimal perKg) {
        return perKg == null
                ? ""
                : Figures.significant(Figures.perPound(Decimal.of(perKg)).multiply(CENTS), 2);
    }

    private Table plan() {
        var columns = new ArrayList<Column>();
        columns.add(new Column("Code", true));
        columns.add(new Column("What for", false));
        result.levers()
                .forEach(lever -> columns.add(
                        new Column(lever.name() + (lever.unit().isEmpty() ? "" : " " + lever.unit()), true)));
        columns.add(new Column("cost /lb", true));
        boolean gains = !result.done() && result.trials().stream().anyMatch(each -> each.gainPerKg() != null);
        if (gains) {
            columns.add(new Column("frees, cents/lb", true));
        }
        return new Table(
                columns, result.trials().stream().map(each -> row(each, gains)).toList());
    }

    private List<String> row(Mixing mixing, boolean gains) {
        var row = new ArrayList<String>();
        row.add(String.valueOf(mixing.code()));
        row.add(mixing.why() + (mixing.repeats() == null ? "" : " " + mixing.repeats()));
        mixing.levers().values().forEach(value -> row.add(Figures.significant(value, DIGITS)));
        row.add(Figures.money(Figures.perPound(mixing.costPerKg())));
        if (gains) {
            row.add(cents(mixing.gainPerKg()));
        }
        return row;
    }

    private List<String> reasons() {
        var reasons = new ArrayList<String>();
        addIf(
                reasons,
                "design",
                "design: as far apart as the brief lets levers be, so that what each does is known best.");
        addIf(reasons, "gain", "gain: what it frees alone; those that are made together free less than their sum.");
        addIf(reasons, "confirm", "confirm: the cheapest blend itself, to see whether it is what it is said to be.");
        addIf(
                reasons,
                "repeat",
                "repeat: mixed anew from the start, to see how much two mixings of one formula differ.");
        if (result.unweighed() > 0) {
            reasons.add("Passed over: " + result.unweighed()
                    + " other points, where no weights on this scale were found" + " that keep every bound.");
        }
        reasons.add("cost: of what is weighed, rounded to the scale.");
        reasons.add("Tasters see the codes alone. --seed " + result.seed() + " gives this plan again.");
        return reasons;
    }

    private void addIf(List<String> reasons, String why, String words) {
        if (result.trials().stream().anyMatch(each -> each.why().equals(why))) {
            reasons.add(words);
        }
    }

    private static List<String> row(LeverRange lever) {
        return List.of(
                lever.name(), Figures.with(lever.least(), lever.unit()), Figures.with(lever.most(), lever.unit()));
    }

    private void addSheet(Mixing mixing, List<Block> blocks) {
        blocks.add(new Heading(mixing.code() + ": " + result.batch() + " to weigh"));
        blocks.add(new Paragraph("Date ____________  Mixed by ________________"));
        if (!mixing.broken().isEmpty()) {
            blocks.add(new Paragraph("These weights break " + String.join(", ", mixing.broken())
                    + ": do not weigh them; take a finer scale or a larger batch."));
        }
        var lines = mixing.lines();
        var rows = IntStream.range(0, lines.size())
                .mapToObj(i -> row(lines.get(i), i > 0 && isIn(lines.get(i - 1).stage(), lines.get(i))))
                .toList();
        blocks.add(new Table(
                List.of(
                        new Column("Stage", false),
                        new Column("Ingredient", false),
                        new Column("weigh g", true),
                        new Column("weighed g", false)),
                rows));
        mixing.settings()
                .forEach((name, value) -> blocks.add(
                        new Paragraph("Made with " + name + ": " + Figures.significant(value, DIGITS) + ".")));
        blocks.add(new Table(
                List.of(new Column("Measure", false), new Column("figures", false)),
                result.measured().stream().map(NextReport::row).toList()));
    }

    private static boolean isIn(String stage, Line line) {
        return line.stage().equals(stage);
    }

    private static List<String> row(Line line, boolean goesOn) {
        return List.of(
                goesOn ? "" : line.stage(),
                line.name(),
                Figures.significant(line.kilograms().multiply(1000), 9),
                WRITE_HERE);
    }

    private static List<String> row(Measured measured) {
        var blanks = measured.tasters().isEmpty()
                ? Collections.nCopies(measured.figures(), WRITE_HERE)
                : measured.tasters().stream().map(by -> by + " ____").toList();
        return List.of(
                measured.name() + (measured.unit().isEmpty() ? "" : ", " + measured.unit()), String.join("  ", blanks));
    }
}
