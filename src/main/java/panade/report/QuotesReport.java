package panade.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.cost.LabelStudy;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.Use;
import panade.domain.origin.Remark;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.quotes.PriceComparison;
import panade.quotes.PriceComparison.Single;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words how one product fares under several price lists. */
public final class QuotesReport {
    /** A switch that saves less than this part of the cost is told as not worth it. */
    private static final BigFraction WORTHWHILE = BigFraction.of(5, 1000);

    private static final BigFraction MIN_SHOWN_SHARE = BigFraction.of(1, 1000);

    private final Brief brief;
    private final PriceComparison comparison;
    private final QuoteReasons reasons;

    private QuotesReport(Brief brief, PriceComparison comparison) {
        this.brief = brief;
        this.comparison = comparison;
        this.reasons = new QuoteReasons(brief, comparison);
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
        var blocks = new ArrayList<>(lists());
        if (blends() > 0 && !switches().isEmpty()) {
            blocks.add(new Points(switches()));
        }
        blocks.addAll(crossed());
        if (blends() > 0) {
            blocks.add(new Heading("One blend for all"));
            blocks.add(new Points(singles()));
        }
        return Remarks.under(
                new ReportDocument(brief.title() + ": " + comparison.lists().size() + " price lists", blocks), remarks);
    }

    private List<Block> costs() {
        var blocks = new ArrayList<>(lists());
        blocks.addAll(crossed());
        return blocks;
    }

    private long blends() {
        return comparison.best().stream().filter(Blended.class::isInstance).count();
    }

    /** List by list; no table where there is nothing to put into it. */
    private List<Block> lists() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        if (blends() > 0) {
            blocks.add(new Paragraph(
                    comparison.isProved()
                            ? "Every cost here is a least cost proved in exact fractions, or an exact sum of prices."
                            : "Every cost here is exact. That no other choice of ingredients is cheaper was not proved of"
                                    + " every list: \"blend\" with that list says how far it is."));
            blocks.add(new Heading("List by list, cost per lb"));
            blocks.add(new Table(columns(), rows()));
        }
        var without = reasons.withoutBlend();
        if (!without.isEmpty()) {
            blocks.add(new Points(without));
        }
        return blocks;
    }

    /** Blends at other lists' prices, where there are enough of both to say more than the first table. */
    private List<Block> crossed() {
        return comparison.lists().size() > 2 && blends() > 1
                ? List.of(new Heading("Each list's best blend (down) at each list's prices (across), per lb"), matrix())
                : List.of();
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
                                            .compareTo(least(comparison.best().get(cheapest))
                                                    .orElseThrow())
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
                    saving.isPresent() && best.isPresent() ? worth(saving.get(), best.get()) : why(stay, j)));
        }
        return rows;
    }

    private String why(Optional<BigFraction> stay, int list) {
        return stay.isPresent() ? "" : reasons.cannotBeMade(list);
    }

    private static String worth(BigFraction saving, BigFraction cost) {
        if (saving.signum() == 0) {
            return "same";
        }
        return saving.compareTo(cost.multiply(WORTHWHILE)) < 0 ? "not worth it" : "";
    }

    /** What switching from the first list's blend changes, list by list. */
    private List<String> switches() {
        var lines = new ArrayList<String>();
        if (comparison.best().get(0) instanceof Blended first) {
            for (int j = 1; j < comparison.lists().size(); j++) {
                var name = comparison.lists().get(j);
                if (comparison.best().get(j) instanceof Blended other) {
                    lines.addAll(change(name, first, other));
                }
            }
        }
        return lines;
    }

    private List<String> change(String list, Blended first, Blended other) {
        return isSame(first.blend(), other.blend())
                ? List.of("the best blend under " + list + " is the same.")
                : List.of(
                        "to the best blend under " + list + ": " + difference(first.blend(), other.blend()) + ".",
                        "its label: " + LabelWords.all(LabelStudy.between(first, other)) + ".");
    }

    /** Whether the same goes into the same stages; who sells it does not matter. */
    private static boolean isSame(Blend one, Blend other) {
        return shares(one).equals(shares(other));
    }

    private static Map<Use, BigFraction> shares(Blend blend) {
        var shares = new HashMap<Use, BigFraction>();
        blend.lines().forEach(line -> shares.merge(line.use(), line.share(), BigFraction::add));
        return shares;
    }

    private String difference(Blend from, Blend to) {
        var ids = new TreeSet<String>();
        from.lines().forEach(line -> ids.add(line.use().ingredient()));
        to.lines().forEach(line -> ids.add(line.use().ingredient()));
        var words = new ArrayList<String>();
        for (var id : ids) {
            var change = to.shareOf(id).subtract(from.shareOf(id));
            boolean crosses = from.shareOf(id).signum() == 0 || to.shareOf(id).signum() == 0;
            if (crosses || change.abs().compareTo(MIN_SHOWN_SHARE.multiply(5)) >= 0) {
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
        var least = comparison.regret().found();
        var mean = comparison.average().found();
        return least.isPresent()
                        && mean.isPresent()
                        && isSame(least.get().blend(), mean.get().blend())
                ? List.of("safest and cheapest on average: " + money(mean.get().perKg()) + currency()
                        + "/lb on average, never more than " + money(least.get().perKg())
                        + " above the best of any list; " + costs(least.get()) + "." + more.apply(least.get()))
                : both(more);
    }

    private List<String> both(Function<Single, String> more) {
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
                                blend.shareOf(b).compareTo(blend.shareOf(a)))
                        .map(id -> name(id) + " " + Figures.percent(blend.shareOf(id)) + " %")
                        .toList());
    }
}
