package panade.report.question;

import static panade.result.ShareLine.shareOf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.report.Block;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;
import panade.report.Figures;
import panade.report.Remarks;
import panade.report.ReportDocument;
import panade.result.BlendResult;
import panade.result.BriefResult;
import panade.result.QuotesResult;
import panade.result.QuotesResult.CheapestOnAverage;
import panade.result.QuotesResult.OneBlend;
import panade.result.QuotesResult.Safest;
import panade.result.QuotesResult.Single;
import panade.result.QuotesResult.Unknown;
import panade.result.ShareLine;

/** Words how one product fares under several price lists. */
public final class QuotesReport {
    /** A switch that saves less than this part of the cost is told as not worth it. */
    private static final BigFraction WORTHWHILE = BigFraction.of(5, 1000);

    private static final BigFraction MIN_SHOWN_SHARE = BigFraction.of(1, 1000);

    private final QuotesResult result;
    private final QuoteReasons reasons;

    private QuotesReport(QuotesResult result) {
        this.result = result;
        this.reasons = new QuoteReasons(result);
    }

    /** The report. */
    public static ReportDocument of(QuotesResult result) {
        return new QuotesReport(result).document();
    }

    /** The costs alone, without the blends behind them. */
    public static List<Block> costs(QuotesResult result) {
        return new QuotesReport(result).costs();
    }

    /** What one blend for all lists would cost, a line for the safest and one for the cheapest on average. */
    public static List<String> singleCosts(QuotesResult result) {
        return new QuotesReport(result).singleCosts();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<>(lists());
        if (blends() > 0 && !switches().isEmpty()) {
            blocks.add(new Points(switches()));
        }
        blocks.addAll(crossed());
        if (blends() > 0) {
            blocks.add(new Heading("One blend for all"));
            blocks.add(new Points(singles()));
        }
        return Remarks.on(
                new ReportDocument(result.title() + ": " + result.lists().size() + " price lists", blocks),
                result.remarks());
    }

    private List<Block> costs() {
        var blocks = new ArrayList<>(lists());
        blocks.addAll(crossed());
        return blocks;
    }

    private long blends() {
        return result.best().stream().filter(BlendResult.class::isInstance).count();
    }

    /** List by list; no table where there is nothing to put into it. */
    private List<Block> lists() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        if (blends() > 0) {
            blocks.add(new Paragraph(
                    result.allProved()
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
        return result.lists().size() > 2 && blends() > 1
                ? List.of(new Heading("Each list's best blend (down) at each list's prices (across), per lb"), matrix())
                : List.of();
    }

    private String money(BigFraction perKg) {
        return Figures.money(Figures.perPound(perKg));
    }

    private String currency() {
        return result.currency().isEmpty() ? "" : " " + result.currency();
    }

    private static Optional<BigFraction> least(BriefResult outcome) {
        return outcome instanceof BlendResult found ? Optional.of(found.cost().perKg()) : Optional.empty();
    }

    private String verdict() {
        int cheapest = -1;
        for (int i = 0; i < result.best().size(); i++) {
            var cost = least(result.best().get(i));
            boolean lower = cost.isPresent()
                    && (cheapest < 0
                            || cost.get()
                                            .compareTo(least(result.best().get(cheapest))
                                                    .orElseThrow())
                                    < 0);
            cheapest = lower ? i : cheapest;
        }
        var pooled = result.pooled()
                .fold(
                        found -> "Bought from all together: "
                                + money(found.cost().perKg()) + currency() + "/lb.",
                        none -> "Bought from all together there is no blend.",
                        open -> "Whether there is a blend when bought from all together could not be decided: "
                                + open.reason() + ".");
        return cheapest < 0
                ? noneAlone() + pooled
                : openLists() + "Cheapest: " + result.lists().get(cheapest) + ", "
                        + money(least(result.best().get(cheapest)).orElseThrow()) + currency() + "/lb. " + pooled;
    }

    private String noneAlone() {
        return openLists().isEmpty() ? "No list alone allows a blend. " : openLists();
    }

    /** Lists of which nothing could be proved either way; empty when there are none. */
    private String openLists() {
        var open = new ArrayList<String>();
        for (int j = 0; j < result.lists().size(); j++) {
            if (result.best().get(j) instanceof BriefResult.Undecided undecided) {
                open.add(result.lists().get(j) + " (" + undecided.reason() + ")");
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
        for (int j = 0; j < result.lists().size(); j++) {
            var best = least(result.best().get(j));
            var stay = Optional.ofNullable(result.costOf().get(0).get(j));
            var saving = best.flatMap(cost -> stay.map(kept -> kept.subtract(cost)));
            rows.add(List.of(
                    result.lists().get(j),
                    result.best()
                            .get(j)
                            .fold(found -> money(found.cost().perKg()), none -> "none", open -> "not known"),
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
        if (result.best().get(0) instanceof BlendResult first) {
            for (int j = 1; j < result.lists().size(); j++) {
                if (result.best().get(j) instanceof BlendResult other) {
                    lines.addAll(change(j, ShareLine.of(first), ShareLine.of(other)));
                }
            }
        }
        return lines;
    }

    private List<String> change(int list, List<ShareLine> first, List<ShareLine> other) {
        var best = "the best blend under " + result.lists().get(list);
        var label = Objects.requireNonNull(result.labels().get(list));
        return isSame(first, other)
                ? List.of(best + " is the same.")
                : List.of(
                        "to " + best + ": " + difference(first, other) + ".",
                        "its label: " + LabelWords.all(label) + ".");
    }

    /** Whether the same goes into the same stages; who sells it does not matter. */
    private static boolean isSame(List<ShareLine> one, List<ShareLine> other) {
        return shares(one).equals(shares(other));
    }

    /** Shares by ingredient and stage. */
    private static Map<List<String>, BigFraction> shares(List<ShareLine> blend) {
        var shares = new HashMap<List<String>, BigFraction>();
        blend.forEach(line -> shares.merge(List.of(line.ingredient(), line.stage()), line.share(), BigFraction::add));
        return shares;
    }

    private static String difference(List<ShareLine> from, List<ShareLine> to) {
        var names = new TreeMap<String, String>();
        from.forEach(line -> names.put(line.ingredient(), line.name()));
        to.forEach(line -> names.put(line.ingredient(), line.name()));
        var words = new ArrayList<String>();
        names.forEach((id, name) -> {
            var was = shareOf(id, from);
            var is = shareOf(id, to);
            var change = is.subtract(was);
            boolean crosses = was.signum() == 0 || is.signum() == 0;
            if (crosses || change.abs().compareTo(MIN_SHOWN_SHARE.multiply(5)) >= 0) {
                words.add(name + (change.signum() > 0 ? " +" : " -") + Figures.percent(change.abs()) + " %");
            }
        });
        return words.isEmpty() ? "hardly anything" : String.join("; ", words);
    }

    private Table matrix() {
        var columns = new ArrayList<Column>();
        columns.add(new Column("", false));
        result.lists().forEach(list -> columns.add(new Column(list, true)));
        var rows = new ArrayList<List<String>>();
        for (int i = 0; i < result.lists().size(); i++) {
            var row = new ArrayList<String>();
            row.add(result.lists().get(i));
            result.costOf().get(i).forEach(cost -> row.add(cost == null ? "-" : money(cost)));
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
        return result.regret() instanceof Safest least
                        && result.average() instanceof CheapestOnAverage mean
                        && isSame(least.blend(), mean.blend())
                ? List.of("safest and cheapest on average: " + money(mean.perKg()) + currency()
                        + "/lb on average, never more than " + money(least.worstPerKg())
                        + " above the best of any list; " + costs(least) + "." + more.apply(least))
                : both(more);
    }

    private List<String> both(Function<Single, String> more) {
        var safest = words(result.regret(), "The safest blend under every list", more);
        var average = words(result.average(), "The cheapest blend on average", more);
        return safest.equals(average) ? List.of(safest) : List.of(safest, average);
    }

    private String words(@Nullable OneBlend blend, String what, Function<Single, String> more) {
        if (blend instanceof Unknown unknown) {
            return what + " is not known: " + unknown.reason() + ".";
        }
        if (blend instanceof Safest regret) {
            return "safest: never more than " + money(regret.worstPerKg()) + currency()
                    + "/lb above the best of any list; " + costs(regret) + "." + more.apply(regret);
        }
        return blend instanceof CheapestOnAverage mean
                ? "cheapest on average, " + money(mean.perKg()) + currency() + "/lb: " + costs(mean) + "."
                        + more.apply(mean)
                : "No one blend can be made under every list.";
    }

    private String costs(Single single) {
        var words = new ArrayList<String>();
        for (int j = 0; j < result.lists().size(); j++) {
            words.add(money(single.costs().get(j)) + " under " + result.lists().get(j));
        }
        return String.join(", ", words);
    }

    private static String words(List<ShareLine> blend) {
        var names = new TreeMap<String, String>();
        blend.forEach(line -> names.put(line.ingredient(), line.name()));
        return String.join(
                ", ",
                names.entrySet().stream()
                        .sorted((a, b) -> shareOf(b.getKey(), blend).compareTo(shareOf(a.getKey(), blend)))
                        .map(each -> each.getValue() + " " + Figures.percent(shareOf(each.getKey(), blend)) + " %")
                        .toList());
    }
}
