package panade.report.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Side;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.ShareLine;
import panade.result.StudyResult;
import panade.result.StudyResult.Kept;
import panade.result.StudyResult.Target;

/** Words how cost and blend behave when prices vary. */
public final class StudyReport {
    private static final int PRICES_TOLD = 8;

    /** Prices with less than this part in the ups and downs are not told. */
    private static final BigFraction MIN_SHOWN_SHARE = BigFraction.of(1, 100);

    private final StudyResult study;

    private StudyReport(StudyResult study) {
        this.study = study;
    }

    /** The report on a study. */
    public static ReportDocument of(StudyResult study) {
        return new StudyReport(study).document();
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
        compositions().ifPresent(words -> blocks.addAll(words.blocks()));
        blocks.add(new Heading("Which prices matter"));
        blocks.add(prices());
        blocks.add(new Heading("How often each ingredient is in the cheapest blend"));
        blocks.add(uses());
        blocks.add(new Heading("How often each bound holds it back"));
        blocks.add(bounds());
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(cautions()));
        var title = study.title() + ": prices drawn " + count(study.draws()) + " times, seed " + study.seed();
        return Remarks.on(new ReportDocument(title, blocks), study.remarks());
    }

    private Optional<CompositionWords> compositions() {
        return Optional.ofNullable(study.compositions()).map(drawn -> new CompositionWords(study, drawn));
    }

    private String verdict() {
        return "Half the time the cheapest blend costs between " + level(1) + " and " + level(3) + currency()
                + "/lb, nine times in ten between " + level(0) + " and " + level(4) + ". Today: "
                + money(study.cost().todayPerKg()) + ".";
    }

    private String words(Target target) {
        return "The target of " + money(target.perKg()) + currency() + "/lb is met in " + count(target.metIn()) + " of "
                + count(study.draws()) + " draws (" + percent(target.metIn())
                + " %): there the cheapest blend costs that"
                + " or less.";
    }

    private String proof() {
        var proof = study.certificate();
        var solved = "Answered from known blends; " + count(proof.proved())
                + " of the draws were solved again in exact " + "fractions";
        return proof.off() == 0
                ? solved + ", and all agree. So were the lowest and the highest cost."
                : solved + ", and " + count(proof.off()) + " DISAGREE: do not rely on this study.";
    }

    private Table costs() {
        var rows = new ArrayList<List<String>>();
        rows.add(List.of("lowest of all draws", money(study.cost().lowestPerKg())));
        study.cost()
                .levels()
                .forEach(level -> rows.add(List.of(
                        Figures.significant(level.share().multiply(100), 2) + " % of draws up to",
                        money(level.perKg()))));
        rows.add(List.of("highest of all draws", money(study.cost().highestPerKg())));
        rows.add(List.of("mean", money(study.cost().meanPerKg())));
        rows.add(List.of("standard deviation", money(study.cost().deviationPerKg())));
        return new Table(List.of(new Column("", false), new Column("Cost", true)), rows);
    }

    private List<String> kept() {
        var safest = study.safest();
        var compared = " of the " + safest.compared() + " blends that were best most often";
        return List.of(
                "today's blend, kept: " + words(study.kept())
                        + ". Prices are as often above today's as below, so no other "
                        + "blend has a lower cost to be expected.",
                safest.today()
                        ? "it is also the safest" + compared + "."
                        : "safest" + compared + ": " + words(safest.kept()) + ". It is "
                                + blend(safest.kept().blend()) + ".");
    }

    private String words(Kept kept) {
        return money(kept.meanAbovePerKg()) + currency() + "/lb above the best of each draw in the mean, "
                + money(kept.worstAbovePerKg()) + " at worst";
    }

    /** Shares by name, the largest first. */
    private static String blend(List<ShareLine> lines) {
        return lines.stream()
                .map(ShareLine::ingredient)
                .distinct()
                .sorted()
                .sorted((a, b) -> ShareLine.shareOf(b, lines).compareTo(ShareLine.shareOf(a, lines)))
                .map(id -> name(id, lines) + " " + Figures.percent(ShareLine.shareOf(id, lines)) + " %")
                .collect(Collectors.joining(", "));
    }

    private static String name(String ingredient, List<ShareLine> lines) {
        return lines.stream()
                .filter(line -> line.ingredient().equals(ingredient))
                .map(ShareLine::name)
                .findFirst()
                .orElseThrow();
    }

    private Table prices() {
        var rows = new ArrayList<List<String>>();
        study.prices().stream()
                .filter(price -> price.partOfVariance().compareTo(MIN_SHOWN_SHARE) >= 0)
                .limit(PRICES_TOLD)
                .forEach(price -> rows.add(List.of(
                        price.name(),
                        price.supplier(),
                        Figures.tenth(price.partOfVariance().multiply(100)))));
        return new Table(
                List.of(
                        new Column("Price of", false),
                        new Column("Supplier", false),
                        new Column("% of the cost's ups and downs", true)),
                rows);
    }

    private Table uses() {
        var rows = new ArrayList<List<String>>();
        study.ingredients()
                .forEach(use -> rows.add(List.of(
                        use.name(), percent(use.draws()), Figures.percent(use.meanShare()), today(use.today()))));
        return new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("% of draws", true),
                        new Column("Mean share %", true),
                        new Column("Today %", true)),
                rows);
    }

    private static String today(BigFraction share) {
        return share.signum() == 0 ? "" : Figures.percent(share);
    }

    private Table bounds() {
        var rows = new ArrayList<List<String>>();
        study.bounds().forEach(bound -> rows.add(List.of(bound.name(), side(bound.binding()), percent(bound.draws()))));
        return new Table(
                List.of(new Column("Bound", false), new Column("Side", false), new Column("% of draws", true)), rows);
    }

    /** A side of a bound, in a word. */
    public static String side(Side side) {
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
        compositions().ifPresent(words -> lines.addAll(words.cautions()));
        if (study.compositions() == null && study.spreadStated()) {
            lines.add("What ingredients hold was kept at the set's values; its spreads were not drawn.");
        }
        lines.addAll(study.notes());
        return lines;
    }

    private String percent(long draws) {
        return Figures.percentOf(draws, study.draws());
    }

    static String count(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    private String level(int index) {
        return money(study.cost().levels().get(index).perKg());
    }

    private String money(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String currency() {
        return study.currency().isEmpty() ? "" : " " + study.currency();
    }
}
