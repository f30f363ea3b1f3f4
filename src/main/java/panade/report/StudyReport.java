package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.domain.Brief;
import panade.domain.Side;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.vary.CompositionStudy;
import panade.vary.PriceStudy;
import panade.vary.PriceStudy.Kept;

/** Words how cost and blend behave when prices vary. */
public final class StudyReport {
    private static final int WEIGHTS_TOLD = 8;

    /** Prices with less than this part in the ups and downs are not told. */
    private static final BigFraction MIN_SHOWN_SHARE = BigFraction.of(1, 100);

    private final Brief brief;
    private final PriceStudy study;
    private final @Nullable CompositionStudy compositions;

    private StudyReport(PriceStudy study, @Nullable CompositionStudy compositions) {
        this.brief = study.today().brief();
        this.study = study;
        this.compositions = compositions;
    }

    /**
     * The report on a study.
     *
     * @param compositions the same with what ingredients hold drawn too; null where that was not done
     */
    public static ReportDocument of(PriceStudy study, @Nullable CompositionStudy compositions) {
        return new StudyReport(study, compositions).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        var target = study.target();
        if (target != null) {
            blocks.add(new Paragraph(words(target)));
        }
        blocks.add(new Paragraph(proof()));
        blocks.add(new Heading("What the cheapest blend costs, per lb"));
        blocks.add(costs());
        blocks.add(new Heading("One blend, whatever the prices do"));
        blocks.add(new Points(kept()));
        if (compositions != null) {
            blocks.addAll(new CompositionWords(study.today(), compositions).blocks());
        }
        blocks.add(new Heading("Which prices matter"));
        blocks.add(weights());
        blocks.add(new Heading("How often each ingredient is in the cheapest blend"));
        blocks.add(uses());
        blocks.add(new Heading("How often each bound holds it back"));
        blocks.add(touches());
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(cautions()));
        var title = brief.title() + ": prices drawn " + count(study.draws()) + " times, seed " + study.seed();
        return Remarks.under(
                new ReportDocument(title, blocks), study.today().asked().remarks());
    }

    private String verdict() {
        return "Half the time the cheapest blend costs between " + level(1) + " and " + level(3) + currency()
                + "/lb, nine times in ten between " + level(0) + " and " + level(4) + ". Today: "
                + money(study.today().blend().costPerKg()) + ".";
    }

    private String words(PriceStudy.Target target) {
        return "The target of " + money(target.perKg()) + currency() + "/lb is met in " + count(target.draws()) + " of "
                + count(study.draws()) + " draws (" + percent(target.draws())
                + " %): there the cheapest blend costs that"
                + " or less.";
    }

    private String proof() {
        var proof = study.proof();
        var solved = "Answered from known blends; " + count(proof.proved())
                + " of the draws were solved again in exact " + "fractions";
        return proof.off() == 0
                ? solved + ", and all agree. So were the lowest and the highest cost."
                : solved + ", and " + count(proof.off()) + " DISAGREE: do not rely on this study.";
    }

    private Table costs() {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("lowest of all draws", money(study.lowest())));
        study.levels()
                .forEach(level -> rows.add(List.of(
                        Figures.significant(level.share().multiply(100), 2) + " % of draws up to",
                        money(level.perKg()))));
        rows.add(List.of("highest of all draws", money(study.highest())));
        rows.add(List.of("mean", money(study.mean())));
        rows.add(List.of("standard deviation", money(study.deviation())));
        return new Table(List.of(new Column("", false), new Column("Cost", true)), rows);
    }

    private List<String> kept() {
        var kept = study.kept();
        var lines = new ArrayList<String>();
        lines.add("today's blend, kept: " + words(kept) + ". Prices are as often above today's as below, so no other "
                + "blend has a lower cost to be expected.");
        lines.add(
                study.safest().blend().equals(kept.blend())
                        ? "it is also the safest of the " + study.compared() + " blends that were best most often."
                        : "safest of the " + study.compared() + " blends that were best most often: "
                                + words(study.safest()) + ". It is " + blend(study.safest()) + ".");
        return lines;
    }

    private String words(Kept kept) {
        return money(kept.meanPerKg()) + currency() + "/lb above the best of each draw in the mean, "
                + money(kept.worstPerKg()) + " at worst";
    }

    private String blend(Kept kept) {
        var ids = new TreeSet<String>();
        kept.blend().lines().forEach(line -> ids.add(line.use().ingredient()));
        return String.join(
                ", ",
                ids.stream()
                        .sorted((a, b) -> kept.blend()
                                .shareOf(b)
                                .subtract(kept.blend().shareOf(a))
                                .signum())
                        .map(id -> name(id) + " " + Figures.percent(kept.blend().shareOf(id)) + " %")
                        .toList());
    }

    private Table weights() {
        var rows = new ArrayList<List<String>>();
        study.weights().stream()
                .filter(weight -> weight.part().subtract(MIN_SHOWN_SHARE).signum() >= 0)
                .limit(WEIGHTS_TOLD)
                .forEach(weight -> rows.add(List.of(
                        name(weight.offer().ingredient()),
                        weight.offer().supplier(),
                        Figures.tenth(weight.part().multiply(100)))));
        return new Table(
                List.of(
                        new Column("Price of", false),
                        new Column("Supplier", false),
                        new Column("% of the cost's ups and downs", true)),
                rows);
    }

    private Table uses() {
        var rows = new ArrayList<List<String>>();
        study.uses()
                .forEach(use -> rows.add(List.of(
                        name(use.ingredient()),
                        percent(use.draws()),
                        Figures.percent(use.meanShare()),
                        today(use.ingredient()))));
        return new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("% of draws", true),
                        new Column("Mean share %", true),
                        new Column("Today %", true)),
                rows);
    }

    private String today(String ingredient) {
        var share = study.today().blend().shareOf(ingredient);
        return share.signum() == 0 ? "" : Figures.percent(share);
    }

    private Table touches() {
        var rows = new ArrayList<List<String>>();
        study.touches().forEach(touch -> rows.add(List.of(touch.name(), side(touch.side()), percent(touch.draws()))));
        return new Table(
                List.of(new Column("Bound", false), new Column("Side", false), new Column("% of draws", true)), rows);
    }

    static String side(Side side) {
        return switch (side) {
            case MIN -> "least";
            case MAX -> "most";
            case FIXED -> "fixed";
        };
    }

    private List<String> cautions() {
        var lines = new ArrayList<String>();
        lines.add("Each price was drawn evenly between its spread below and above today's, each on its own. Prices "
                + "that rise together, such as those of oils, make the ends of the cost likelier than told here.");
        lines.add("A price's part of the ups and downs is its squared correlation with the cheapest blend's cost.");
        boolean varied = brief.candidates().stream()
                .anyMatch(id -> !brief.set().ingredient(id).spread().isEmpty());
        if (compositions != null) {
            lines.addAll(new CompositionWords(study.today(), compositions).cautions());
        } else if (varied) {
            lines.add("What ingredients hold was kept at the set's values; its spreads were not drawn.");
        }
        lines.addAll(brief.notes());
        return lines;
    }

    private String percent(long draws) {
        return Figures.percentOf(draws, study.draws());
    }

    static String count(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    private String level(int index) {
        return money(study.levels().get(index).perKg());
    }

    private String money(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String currency() {
        return brief.currency().isEmpty() ? "" : " " + brief.currency();
    }

    private String name(String id) {
        return brief.set().ingredient(id).name();
    }
}
