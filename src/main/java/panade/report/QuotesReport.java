package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Remark;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.study.LabelStudy;
import panade.study.PriceComparison;
import panade.study.PriceComparison.Single;

/** Words how one product fares under several price lists. */
public final class QuotesReport {
    /** A switch that saves less than this part of the cost is told as not worth it. */
    private static final BigFraction WORTHWHILE = BigFraction.of(5, 1000);

    private static final BigFraction SEEN = BigFraction.of(1, 1000);

    /** The place of the switches among the blocks: after the table of costs. */
    private static final int SWITCHES = 4;

    private final Brief brief;
    private final PriceComparison comparison;

    private QuotesReport(Brief brief, PriceComparison comparison) {
        this.brief = brief;
        this.comparison = comparison;
    }

    /**
     * The report on a comparison; the brief names the product and its ingredients.
     *
     * @param remarks on the brief under any of the lists
     */
    public static ReportDocument of(Brief brief, PriceComparison comparison, List<Remark> remarks) {
        return new QuotesReport(brief, comparison).document(remarks);
    }

    /** The costs alone, without the blends behind them. */
    public static List<Block> costs(Brief brief, PriceComparison comparison) {
        return new QuotesReport(brief, comparison).costs();
    }

    /** What one blend for all lists would cost, a line for the safest and one for the cheapest on average. */
    public static List<String> singleCosts(Brief brief, PriceComparison comparison) {
        return new QuotesReport(brief, comparison).singleCosts();
    }

    private ReportDocument document(List<Remark> remarks) {
        var blocks = costs();
        blocks.add(SWITCHES, new Points(switches()));
        blocks.add(new Heading("One blend for all"));
        blocks.add(new Points(singles()));
        return Remarks.under(
                new ReportDocument(brief.title() + ": " + comparison.lists().size() + " price lists", blocks), remarks);
    }

    private List<Block> costs() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        blocks.add(new Paragraph(
                comparison.isProved()
                        ? "Every cost here is a least cost proved in exact fractions, or an exact sum of prices."
                        : "Every cost here is exact. That no other choice of ingredients is cheaper was not proved of"
                                + " every list: \"blend\" with that list says how far it is."));
        blocks.add(new Heading("List by list, cost per lb"));
        blocks.add(new Table(columns(), rows()));
        if (comparison.lists().size() > 2) {
            blocks.add(new Heading("Each list's best blend (down) at each list's prices (across), per lb"));
            blocks.add(matrix());
        }
        return blocks;
    }

    private String money(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String currency() {
        return brief.currency().isEmpty() ? "" : " " + brief.currency();
    }

    private static Optional<BigFraction> least(Outcome outcome) {
        return outcome instanceof Blended blended ? Optional.of(blended.blend().costPerKg()) : Optional.empty();
    }

    private String verdict() {
        int cheapest = -1;
        for (int i = 0; i < comparison.best().size(); i++) {
            var cost = least(comparison.best().get(i));
            boolean lower = cost.isPresent()
                    && (cheapest < 0
                            || cost.get()
                                            .subtract(least(comparison.best().get(cheapest))
                                                    .orElseThrow())
                                            .signum()
                                    < 0);
            cheapest = lower ? i : cheapest;
        }
        var pooled = comparison
                .pooled()
                .fold(
                        found -> "Bought from all together: "
                                + money(found.blend().costPerKg()) + currency() + "/lb.",
                        none -> "Bought from all together there is no blend.",
                        open -> "Whether there is a blend when bought from all together could not be decided: "
                                + open.reason() + ".");
        return cheapest < 0
                ? noneAlone() + pooled
                : openLists() + "Cheapest: " + comparison.lists().get(cheapest) + ", "
                        + money(least(comparison.best().get(cheapest)).orElseThrow()) + currency() + "/lb. " + pooled;
    }

    private String noneAlone() {
        return openLists().isEmpty() ? "No list alone allows a blend. " : openLists();
    }

    /** Lists of which nothing could be proved either way; empty when there are none. */
    private String openLists() {
        var open = new ArrayList<String>();
        for (int j = 0; j < comparison.lists().size(); j++) {
            if (comparison.best().get(j) instanceof Outcome.Undecided undecided) {
                open.add(comparison.lists().get(j) + " (" + undecided.reason() + ")");
            }
        }
        return open.isEmpty() ? "" : "Not decided, neither a blend nor none proved: " + String.join(", ", open) + ". ";
    }

    private List<Column> columns() {
        return List.of(
                new Column("List", false),
                new Column("Best blend", true),
                new Column("First list's blend", true),
                new Column("Switching saves", true),
                new Column("", false));
    }

    private List<List<String>> rows() {
        var rows = new ArrayList<List<String>>();
        for (int j = 0; j < comparison.lists().size(); j++) {
            var best = least(comparison.best().get(j));
            var stay = comparison.costOf().get(0).get(j);
            var saving = best.flatMap(cost -> stay.map(kept -> kept.subtract(cost)));
            rows.add(List.of(
                    comparison.lists().get(j),
                    comparison
                            .best()
                            .get(j)
                            .fold(found -> money(found.blend().costPerKg()), none -> "none", open -> "not known"),
                    stay.map(this::money).orElse("cannot be made"),
                    saving.map(this::money).orElse(""),
                    saving.isPresent() && best.isPresent() ? worth(saving.get(), best.get()) : missing(j)));
        }
        return rows;
    }

    /** What the first list's blend needs and this list does not have. */
    private String missing(int list) {
        if (comparison.best().get(0) instanceof Blended first
                && comparison.best().get(list) instanceof Blended other) {
            var names = new TreeSet<String>();
            first.blend().lines().stream()
                    .map(line -> line.use().ingredient())
                    .filter(id -> !other.asked().candidates().contains(id))
                    .forEach(id -> names.add(name(id)));
            return names.isEmpty() ? "" : "no " + String.join(", ", names);
        }
        return "";
    }

    private static String worth(BigFraction saving, BigFraction cost) {
        if (saving.signum() == 0) {
            return "same";
        }
        return saving.subtract(cost.multiply(WORTHWHILE)).signum() < 0 ? "not worth it" : "";
    }

    /** What switching from the first list's blend changes, list by list. */
    private List<String> switches() {
        var lines = new ArrayList<String>();
        if (comparison.best().get(0) instanceof Blended first) {
            for (int j = 1; j < comparison.lists().size(); j++) {
                var name = comparison.lists().get(j);
                if (comparison.best().get(j) instanceof Blended other) {
                    lines.add(
                            "to the best blend under " + name + ": " + difference(first.blend(), other.blend()) + ".");
                    lines.add("its label: " + LabelWords.all(LabelStudy.between(first, other)) + ".");
                } else {
                    lines.add(
                            comparison.best().get(j) instanceof Outcome.Undecided
                                    ? "under " + name + " no blend is known."
                                    : "under " + name
                                            + " there is no blend: what is missing or dear cannot be made up for.");
                }
            }
        }
        if (!lines.isEmpty()) {
            return lines;
        }
        return comparison.best().get(0) instanceof Outcome.Undecided
                ? List.of("No blend is known under the first list.")
                : List.of("The first list allows no blend.");
    }

    private String difference(Blend from, Blend to) {
        var ids = new TreeSet<String>();
        from.lines().forEach(line -> ids.add(line.use().ingredient()));
        to.lines().forEach(line -> ids.add(line.use().ingredient()));
        var words = new ArrayList<String>();
        for (var id : ids) {
            var change = to.shareOf(id).subtract(from.shareOf(id));
            boolean crosses = from.shareOf(id).signum() == 0 || to.shareOf(id).signum() == 0;
            if (crosses || change.abs().subtract(SEEN.multiply(5)).signum() >= 0) {
                words.add(name(id) + (change.signum() > 0 ? " +" : " -") + Figures.percent(change.abs()) + " %");
            }
        }
        return words.isEmpty() ? "hardly anything" : String.join("; ", words);
    }

    private String name(String id) {
        return brief.set().ingredient(id).name();
    }

    private Table matrix() {
        var columns = new ArrayList<Column>();
        columns.add(new Column("", false));
        comparison.lists().forEach(list -> columns.add(new Column(list, true)));
        var rows = new ArrayList<List<String>>();
        for (int i = 0; i < comparison.lists().size(); i++) {
            var row = new ArrayList<String>();
            row.add(comparison.lists().get(i));
            comparison
                    .costOf()
                    .get(i)
                    .forEach(cost -> row.add(cost.map(this::money).orElse("-")));
            rows.add(List.copyOf(row));
        }
        return new Table(columns, rows);
    }

    private List<String> singles() {
        return singles(single -> " It is " + words(single.blend()) + ".");
    }

    private List<String> singleCosts() {
        return singles(single -> "");
    }

    private List<String> singles(Function<Single, String> more) {
        var safest = comparison
                .regret()
                .fold(
                        regret -> "safest: never more than " + money(regret.perKg()) + currency()
                                + "/lb above the best of any list; " + costs(regret) + "." + more.apply(regret),
                        () -> "No one blend can be made under every list.",
                        reason -> "The safest blend under every list is not known: " + reason + ".");
        var average = comparison
                .average()
                .fold(
                        mean -> "cheapest on average, " + money(mean.perKg()) + currency() + "/lb: " + costs(mean) + "."
                                + more.apply(mean),
                        () -> "No one blend can be made under every list.",
                        reason -> "The cheapest blend on average is not known: " + reason + ".");
        return safest.equals(average) ? List.of(safest) : List.of(safest, average);
    }

    private String costs(Single single) {
        var words = new ArrayList<String>();
        for (int j = 0; j < comparison.lists().size(); j++) {
            words.add(money(single.costs().get(j)) + " under "
                    + comparison.lists().get(j));
        }
        return String.join(", ", words);
    }

    private String words(Blend blend) {
        var ids = new TreeSet<String>();
        blend.lines().forEach(line -> ids.add(line.use().ingredient()));
        return String.join(
                ", ",
                ids.stream()
                        .sorted((a, b) ->
                                blend.shareOf(b).subtract(blend.shareOf(a)).signum())
                        .map(id -> name(id) + " " + Figures.percent(blend.shareOf(id)) + " %")
                        .toList());
    }
}
