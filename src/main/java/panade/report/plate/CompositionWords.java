package panade.report.plate;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.result.StudyResult;
import panade.result.StudyResult.Broken;
import panade.result.StudyResult.Compositions;
import panade.result.StudyResult.Level;

/** Words how cost and blend behave when what ingredients hold varies with the prices. */
final class CompositionWords {
    private static final BigInteger PER_CENT = BigInteger.valueOf(100);

    private final StudyResult whole;
    private final Compositions study;

    CompositionWords(StudyResult whole, Compositions study) {
        this.whole = whole;
        this.study = study;
    }

    List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Heading("When what ingredients hold varies too"));
        blocks.add(new Paragraph(drawn()));
        blocks.add(new Points(List.of(found(), kept())));
        if (!study.broken().isEmpty()) {
            blocks.add(table());
        }
        return blocks;
    }

    private String drawn() {
        var values = study.values() == 1 ? "The one value that states" : "The " + study.values() + " values that state";
        return values + " a spread in the ingredient set " + (study.values() == 1 ? "was" : "were")
                + " drawn together with the prices, " + times() + ". Each draw was solved on its own and proved in "
                + "exact fractions. All other sections keep what ingredients hold at the set's values.";
    }

    private String times() {
        return study.draws() == 1 ? "once" : StudyReport.count(study.draws()) + " times";
    }

    private String found() {
        var costs = study.cost();
        if (costs == null) {
            return "in none of the draws does any blend meet every bound.";
        }
        var none = study.noBlend() == 0
                ? "in every draw some blend meets every bound, if you know what you were sent. "
                : "in " + percent(study.noBlend()) + " % of the draws no blend meets every bound, whatever you do. "
                        + "Otherwise, and if you know what you were sent, ";
        var cost = "the cheapest costs between " + money(costs.levels().get(1)) + " and "
                + money(costs.levels().get(3)) + currency() + "/lb half the time, between "
                + money(costs.levels().get(0)) + " and " + money(costs.levels().get(4)) + " nine times in ten.";
        var target = study.target();
        var met = target == null
                ? ""
                : " The target of " + Figures.money(Figures.perPound(target.perKg())) + currency() + "/lb"
                        + " is met in " + percent(target.metIn()) + " % of the draws.";
        return none + (study.noBlend() == 0 ? "T" + cost.substring(1) : cost) + met;
    }

    private String kept() {
        if (study.broken().isEmpty()) {
            return "today's blend, kept as it is, meets every bound in every draw.";
        }
        var first = study.broken().get(0);
        var meets = study.keptMeets() == 0
                ? "breaks a bound in every draw"
                : "still meets every bound in " + percent(study.keptMeets()) + " % of the draws";
        return "today's blend, kept as it is, " + meets + ". What it breaks most often is \"" + first.name() + "\", in "
                + percent(first.draws()) + " %.";
    }

    private Table table() {
        var rows = study.broken().stream()
                .map(bound -> List.of(
                        bound.name(),
                        StudyReport.side(bound.binding()),
                        percent(bound.draws()),
                        Figures.with(bound.asks(), bound.unit()),
                        oneInTwenty(bound)))
                .toList();
        return new Table(
                List.of(
                        new Column("Today's blend breaks", false),
                        new Column("Side", false),
                        new Column("% of draws", true),
                        new Column("Asks", true),
                        new Column("1 in 20 comes to", true)),
                rows);
    }

    /** What one draw in twenty comes to, or is further off. */
    private static String oneInTwenty(Broken bound) {
        var value = bound.oneInTwenty();
        return value == null ? "" : Figures.with(value, bound.unit());
    }

    List<String> cautions() {
        var lines = new ArrayList<String>();
        lines.add("What ingredients hold was drawn from a normal distribution around the set's value, each value on "
                + "its own, cut at nothing and at 100 g in 100 g, which moves the mean of a value that lies close to "
                + "either. In truth more of one thing is less of another, and values that state no spread vary as "
                + "well: they were kept.");
        if (!study.broken().isEmpty()) {
            lines.add("A blend of least cost lies on its bounds, and a bound it just meets is broken in about half of "
                    + "the draws. \"1 in 20 comes to\": in one draw of twenty it is that or further off. Ask for about "
                    + "so much more, or less, than you need, and nineteen draws in twenty keep what you need.");
        }
        lines.add("With " + StudyReport.count(study.draws()) + " draws of what ingredients hold, a per cent told is "
                + "right to about " + margin() + " points either way, nineteen times in twenty.");
        if (whole.rules()) {
            lines.add("The rules' choice of ingredients was kept as it is today; another choice might do where no "
                    + "blend was found.");
        }
        return lines;
    }

    /** Two standard deviations of a share of half the draws, the widest there is: 100 points over the square root. */
    private String margin() {
        var square = PER_CENT.pow(3).divide(BigInteger.valueOf(study.draws()));
        var tenths = square.sqrt();
        return tenths.divide(BigInteger.TEN) + "." + tenths.mod(BigInteger.TEN);
    }

    private String percent(long draws) {
        return Figures.percentOf(draws, study.draws());
    }

    private String money(Level level) {
        return Figures.money(Figures.perPound(level.perKg()));
    }

    private String currency() {
        return whole.currency().isEmpty() ? "" : " " + whole.currency();
    }
}
