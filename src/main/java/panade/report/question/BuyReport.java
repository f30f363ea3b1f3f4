package panade.report.question;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
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
import panade.result.BuyResult;
import panade.result.BuyResult.Period;
import panade.result.BuyResult.Plan;
import panade.result.BuyResult.Search;
import panade.result.BuyResult.Status;
import panade.result.BuyResult.Use;

/** Words what to order: three ways to buy side by side, then the order lists of the one that is advised. */
public final class BuyReport {
    private final BuyResult result;
    private final BuyResult.Order order;
    private final StockWeights weights;

    private BuyReport(BuyResult result) {
        this.result = result;
        this.order = result.order();
        this.weights = new StockWeights(order);
    }

    /**
     * The report.
     *
     * @param isStopped whether the search was interrupted
     */
    public static ReportDocument of(BuyResult result, boolean isStopped) {
        return new BuyReport(result).document(isStopped);
    }

    private ReportDocument document(boolean isStopped) {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        if (isStopped) {
            blocks.add(new Paragraph("The search was interrupted: these are the best plans found until then."));
        }
        if (result.plans().findAny().isPresent()) {
            blocks.add(
                    new Paragraph("Whole packs were chosen by a search; beside them all is proved in exact fractions."
                            + " How far from the best a plan may be is the search's own word."));
            blocks.add(new Heading("Three ways to buy"));
            blocks.add(ways());
        }
        var points = new ArrayList<String>();
        addEnded("blends kept", result.searches().frozen(), result.frozen(), points);
        addEnded("blends adapt", result.searches().adapted(), result.adapted(), points);
        addEnded("least cash", result.searches().leastCash(), result.leastCash(), points);
        order.worths()
                .forEach(each -> points.add("Leftovers of " + each.name() + " are counted at "
                        + Figures.significant(each.part().multiply(100), 3) + " %."));
        points.addAll(new SmallOrderWords(result.smallOrders(), order.periods(), this::money).lines());
        if (!points.isEmpty()) {
            blocks.add(new Points(points));
        }
        blocks.addAll(new StockWords(result.onHand(), weights).blocks());
        result.advised().forEach(period -> addPeriod(period, blocks));
        blocks.add(new Heading("Mind"));
        var caution = result.caution();
        blocks.add(new Points(Cautions.of(caution.notes(), caution.allergens(), caution.notKnown())));
        return Remarks.on(new ReportDocument("What to order: " + products(), blocks), result.remarks());
    }

    private String products() {
        boolean several = order.periods() > 1;
        var words = order.products().stream()
                .map(product -> several ? product.title() : product.amount() + " of " + product.title())
                .collect(Collectors.joining(", "));
        return several ? words + ", " + order.periods() + " periods" : words;
    }

    private String money(BigFraction value) {
        return Figures.cash(value) + (order.currency().isEmpty() ? "" : " " + order.currency());
    }

    private String verdict() {
        var adapted = result.adapted();
        if (adapted == null) {
            return without(result.outcome());
        }
        var words = "Cash out " + money(adapted.cash()) + " when blends may adapt to packs";
        var frozen = result.frozen();
        return frozen == null
                ? words + "."
                : words + "; " + money(frozen.cash()) + " if the cheapest blends by weight are kept.";
    }

    private static String without(Search search) {
        if (search.status() == Status.UNDECIDED) {
            return "No plan was found, and none is ruled out: " + search.reason()
                    + (search.asked()
                            ? ". Search longer with --seconds."
                            : ". Whole packs are found by a solver that does not start on this computer; searching"
                                    + " longer does not help.");
        }
        var leave =
                "No plan can be: what is sold, in which packs and from which minimums, and what the store holds leave"
                        + " none. ";
        return Boolean.TRUE.equals(search.proved())
                ? leave + "Proved in exact fractions: none can be even if packs could be split."
                : leave + "That is the search's own word, in binary arithmetic; it was not proved.";
    }

    /** Tells of a search that was not done. */
    private void addEnded(String words, Search search, @Nullable Plan plan, List<String> points) {
        if (search.status() == Status.UNDECIDED && result.adapted() != null) {
            points.add("For \"" + words + "\" no plan was found, and none is ruled out: " + search.reason() + ".");
        }
        if (plan != null && !plan.finished()) {
            points.add("The search for \"" + words + "\" ended before it was done: a better plan may exist, "
                    + gap(plan) + " of its cash cheaper at most. --seconds searches longer.");
        }
    }

    private Table ways() {
        return new Table(
                List.of(
                        new Column("", false),
                        new Column("blends kept", true),
                        new Column("blends adapt", true),
                        new Column("least cash", true)),
                rows());
    }

    private List<List<String>> rows() {
        var rows = new ArrayList<List<String>>();
        boolean stored = order.periods() > 1;
        rows.add(row("cash out", plan -> Figures.cash(plan.cash())));
        rows.add(row("- for goods", plan -> Figures.cash(plan.goodsMoney())));
        rows.add(row(
                stored ? "- for delivery and storage" : "- for delivery",
                plan -> Figures.cash(plan.deliveryAndStorage())));
        addWhereSome("was on the shelf", Plan::wasOnShelf, rows);
        rows.add(row("in the bowl", plan -> Figures.cash(plan.inBowl())));
        addWhereSome("thrown away", Plan::wasted, rows);
        rows.add(row("left on the shelf", plan -> Figures.cash(plan.onShelf())));
        rows.add(row("goods to order", plan -> String.valueOf(plan.goods())));
        rows.add(row("orders", plan -> String.valueOf(plan.orders())));
        rows.add(row("at most from the best", BuyReport::gap));
        rows.add(row("leftovers counted at", plan -> ""));
        rows.add(List.of("by exact weight, for comparison", Figures.cash(result.exactWeights()), "", ""));
        return rows;
    }

    private void addWhereSome(String words, Function<Plan, BigFraction> money, List<List<String>> rows) {
        if (result.plans().anyMatch(plan -> money.apply(plan).signum() != 0)) {
            rows.add(row(words, plan -> Figures.cash(money.apply(plan))));
        }
    }

    private List<String> row(String words, Function<Plan, String> cell) {
        if (words.startsWith("leftovers")) {
            var percent = Figures.significant(order.worth().multiply(100), 3) + " %";
            return List.of(words, percent, percent, "0 %");
        }
        var searches = result.searches();
        return List.of(
                words,
                told(searches.frozen(), result.frozen(), cell),
                told(searches.adapted(), result.adapted(), cell),
                told(searches.leastCash(), result.leastCash(), cell));
    }

    private static String told(Search search, @Nullable Plan plan, Function<Plan, String> cell) {
        return plan == null ? (search.status() == Status.UNDECIDED ? "not found" : "none") : cell.apply(plan);
    }

    private static String gap(Plan plan) {
        return plan.gap() == null ? "not known" : Figures.significant(plan.gap().multiply(100), 2) + " %";
    }

    private void addPeriod(Period period, List<Block> blocks) {
        var when = period.period().isEmpty() ? "" : period.period() + ": ";
        for (var each : period.orders()) {
            blocks.add(new Heading(when
                    + (each.placed() ? "Order from " : "As needed, without an order, from ") + each.supplier() + ": "
                    + money(each.goods())
                    + (each.delivery().signum() > 0 ? " and " + money(each.delivery()) + " delivery" : "")));
            blocks.add(goods(period, each.supplier()));
            if (each.minimumOrder().signum() > 0) {
                blocks.add(new Paragraph("Minimum order " + money(each.minimumOrder()) + ": "
                        + money(each.goods().subtract(each.minimumOrder())) + " over. Delivery takes "
                        + each.leadDays() + (each.leadDays() == 1 ? " day." : " days.")));
            }
        }
        blocks.add(new Heading("What is made of it" + (period.period().isEmpty() ? "" : ", " + period.period())));
        blocks.add(blends(period));
    }

    private Table goods(Period period, String supplier) {
        var rows = period.lines().stream()
                .filter(line -> line.supplier().equals(supplier))
                .map(line -> List.of(
                        line.name(),
                        line.packs() == null
                                ? ""
                                : Decimal.round(line.packs(), 0).toPlainString(),
                        line.pack() == null ? weights.text(line.kilograms()) : "x " + line.pack(),
                        Figures.cash(line.money()),
                        left(period, line.ingredient())))
                .toList();
        return new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("packs", true),
                        new Column("", false),
                        new Column("money", true),
                        new Column("left, " + order.unit(), true)),
                rows);
    }

    private String left(Period period, String ingredient) {
        return period.store().stream()
                .filter(stock -> stock.ingredient().equals(ingredient))
                .findFirst()
                .map(stock -> weights.number(stock.left()))
                .orElse("");
    }

    private Table blends(Period period) {
        var columns = new ArrayList<Column>();
        columns.add(new Column("Per cent of the batch", false));
        order.products().forEach(product -> columns.add(new Column(product.title(), true)));
        var names = new TreeMap<String, String>();
        period.blends().forEach(blend -> blend.forEach(use -> names.put(use.ingredient(), use.name())));
        var rows = new ArrayList<List<String>>();
        names.forEach((id, name) -> {
            var cells = new ArrayList<>(List.of(name));
            period.blends().forEach(blend -> cells.add(share(id, blend)));
            rows.add(cells);
        });
        return new Table(columns, rows);
    }

    private static String share(String id, List<Use> blend) {
        var share = blend.stream()
                .filter(use -> use.ingredient().equals(id))
                .map(Use::share)
                .reduce(BigFraction.ZERO, BigFraction::add);
        return share.signum() == 0 ? "" : Figures.percent(share);
    }
}
