package panade.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.buy.LeftoverWorth;
import panade.buy.MultiPeriodPlan;
import panade.buy.PlanSearch;
import panade.buy.PurchaseAnswers;
import panade.buy.PurchasePlan;
import panade.domain.Blend;
import panade.domain.Brief;
import panade.domain.purchase.StoreRoom;
import panade.quantity.Decimal;
import panade.report.Block.Column;
import panade.report.Block.Heading;
import panade.report.Block.Paragraph;
import panade.report.Block.Points;
import panade.report.Block.Table;

/** Words what to order: three ways to buy side by side, then the order lists of the one that is advised. */
public final class BuyReport {
    private final PurchaseAnswers answers;
    private final Brief first;
    private final LeftoverWorth worth;
    private final StoreRoom room;
    private final boolean isStopped;
    private final StockWeights weights;

    private BuyReport(PurchaseAnswers answers, LeftoverWorth worth, StoreRoom room, boolean isStopped) {
        this.answers = answers;
        this.first = answers.products().get(0).best().asked();
        this.worth = worth;
        this.room = room;
        this.isStopped = isStopped;
        this.weights = StockWeights.of(first);
    }

    /**
     * The report.
     *
     * @param worth what leftovers were counted at
     * @param isStopped whether the search was interrupted
     */
    public static ReportDocument of(PurchaseAnswers answers, LeftoverWorth worth, StoreRoom room, boolean isStopped) {
        return new BuyReport(answers, worth, room, isStopped).document();
    }

    private ReportDocument document() {
        var blocks = new ArrayList<Block>();
        blocks.add(new Paragraph(verdict()));
        if (isStopped) {
            blocks.add(new Paragraph("The search was interrupted: these are the best plans found until then."));
        }
        if (plans().findAny().isPresent()) {
            blocks.add(
                    new Paragraph("Whole packs were chosen by a search; beside them all is proved in exact fractions."
                            + " How far from the best a plan may be is the search's own word."));
            blocks.add(new Heading("Three ways to buy"));
            blocks.add(ways());
        }
        var points = new ArrayList<String>();
        addEnded("blends kept", answers.keeping(), points);
        addEnded("blends adapt", answers.adapting(), points);
        addEnded("least cash", answers.saving(), points);
        worth.named().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> "Leftovers of " + name(entry.getKey()) + " are counted at "
                        + Figures.significant(entry.getValue().multiply(100), 3) + " %.")
                .forEach(points::add);
        points.addAll(
                new SmallOrderWords(answers.smallOrders(), answers.periods().size(), this::money).lines());
        if (!points.isEmpty()) {
            blocks.add(new Points(points));
        }
        new StockWords(answers, room).blocks().forEach(blocks::add);
        answers.adapted().ifPresent(campaign -> campaign.periods().forEach(plan -> addPlan(plan, blocks)));
        blocks.add(new Heading("Mind"));
        blocks.add(new Points(Cautions.of(first, everything())));
        return Remarks.under(new ReportDocument("What to order: " + products(), blocks), answers.remarks());
    }

    private String products() {
        int periods = answers.periods().size();
        if (periods > 1) {
            var titles = answers.products().stream()
                    .map(product -> product.best().asked().title())
                    .toList();
            return String.join(", ", titles) + ", " + periods + " periods";
        }
        var words = answers.products().stream()
                .map(product -> product.best().asked().batch().text() + " of "
                        + product.best().asked().title())
                .toList();
        return String.join(", ", words);
    }

    private String money(BigFraction value) {
        return Figures.cash(value) + (first.currency().isEmpty() ? "" : " " + first.currency());
    }

    private String verdict() {
        var adapted = answers.adapted();
        if (adapted.isEmpty()) {
            return without(answers.adapting());
        }
        var cash = adapted.get().cash();
        var words = "Cash out " + money(cash) + " when blends may adapt to packs";
        return answers.frozen()
                .map(frozen -> words + "; " + money(frozen.cash()) + " if the cheapest blends by weight are kept.")
                .orElse(words + ".");
    }

    private static String without(PlanSearch search) {
        if (search instanceof PlanSearch.Undecided undecided) {
            return "No plan was found, and none is ruled out: " + undecided.reason()
                    + (undecided.asked()
                            ? ". Search longer with --seconds."
                            : ". Whole packs are found by a solver that does not start on this computer; searching"
                                    + " longer does not help.");
        }
        var leave =
                "No plan can be: what is sold, in which packs and from which minimums, and what the store holds leave"
                        + " none. ";
        return search instanceof PlanSearch.Impossible impossible && impossible.proved()
                ? leave + "Proved in exact fractions: none can be even if packs could be split."
                : leave + "That is the search's own word, in binary arithmetic; it was not proved.";
    }

    /** Tells of a search that was not done. */
    private void addEnded(String words, PlanSearch search, List<String> points) {
        if (search instanceof PlanSearch.Undecided undecided
                && answers.adapted().isPresent()) {
            points.add("For \"" + words + "\" no plan was found, and none is ruled out: " + undecided.reason() + ".");
        }
        search.plan()
                .filter(plan -> !plan.finished())
                .ifPresent(plan -> points.add("The search for \"" + words + "\" ended before it was done: a better plan"
                        + " may exist, " + gap(plan) + " of its cash cheaper at most. --seconds searches longer."));
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
        boolean stored = answers.periods().size() > 1;
        rows.add(row("cash out", plan -> Figures.cash(plan.cash())));
        rows.add(row("- for goods", plan -> Figures.cash(plan.goodsMoney())));
        rows.add(row(
                stored ? "- for delivery and storage" : "- for delivery",
                plan -> Figures.cash(plan.deliveryAndStorage())));
        addWhereSome("was on the shelf", MultiPeriodPlan::wasOnShelf, rows);
        rows.add(row("in the bowl", plan -> Figures.cash(plan.inBowl())));
        addWhereSome("thrown away", MultiPeriodPlan::wasted, rows);
        rows.add(row("left on the shelf", plan -> Figures.cash(plan.onShelf())));
        rows.add(row("goods to order", plan -> String.valueOf(plan.goods())));
        rows.add(row("orders", plan -> String.valueOf(plan.orders())));
        rows.add(row("at most from the best", BuyReport::gap));
        rows.add(row("leftovers counted at", plan -> ""));
        rows.add(List.of("by exact weight, for comparison", Figures.cash(answers.exact()), "", ""));
        return rows;
    }

    private Stream<MultiPeriodPlan> plans() {
        return Stream.of(answers.frozen(), answers.adapted(), answers.leastCash())
                .flatMap(Optional::stream);
    }

    private void addWhereSome(String words, Function<MultiPeriodPlan, BigFraction> money, List<List<String>> rows) {
        if (plans().anyMatch(plan -> money.apply(plan).signum() != 0)) {
            rows.add(row(words, plan -> Figures.cash(money.apply(plan))));
        }
    }

    private List<String> row(String words, Function<MultiPeriodPlan, String> cell) {
        if (words.startsWith("leftovers")) {
            var percent = Figures.significant(worth.usual().multiply(100), 3) + " %";
            return List.of(words, percent, percent, "0 %");
        }
        return List.of(
                words, told(answers.keeping(), cell), told(answers.adapting(), cell), told(answers.saving(), cell));
    }

    private static String told(PlanSearch search, Function<MultiPeriodPlan, String> cell) {
        return search.plan().map(cell).orElse(search instanceof PlanSearch.Undecided ? "not found" : "none");
    }

    private static String gap(MultiPeriodPlan plan) {
        return plan.gap()
                .map(gap -> Figures.significant(gap.multiply(100), 2) + " %")
                .orElse("not known");
    }

    private void addPlan(PurchasePlan plan, List<Block> blocks) {
        for (var order : plan.orders()) {
            var terms = order.terms();
            blocks.add(new Heading(when(plan)
                    + (order.placed() ? "Order from " : "As needed, without an order, from ") + terms.supplier() + ": "
                    + money(order.goods())
                    + (terms.delivery().signum() > 0 ? " and " + money(terms.delivery()) + " delivery" : "")));
            blocks.add(goods(plan, terms.supplier()));
            if (terms.minimumOrder().signum() > 0) {
                blocks.add(new Paragraph("Minimum order " + money(terms.minimumOrder()) + ": "
                        + money(order.goods().subtract(terms.minimumOrder())) + " over. Delivery takes "
                        + terms.leadDays() + (terms.leadDays() == 1 ? " day." : " days.")));
            }
        }
        blocks.add(new Heading("What is made of it" + (plan.period().isEmpty() ? "" : ", " + plan.period())));
        blocks.add(blends(plan));
    }

    private static String when(PurchasePlan plan) {
        return plan.period().isEmpty() ? "" : plan.period() + ": ";
    }

    private Table goods(PurchasePlan plan, String supplier) {
        var rows = plan.lines().stream()
                .filter(line -> line.offer().supplier().equals(supplier))
                .map(line -> {
                    var pack = line.offer().pack();
                    var left = plan.store().stream()
                            .filter(stock ->
                                    stock.ingredient().equals(line.offer().ingredient()))
                            .findFirst()
                            .map(stock -> weights.number(stock.left()))
                            .orElse("");
                    return List.of(
                            name(line.offer().ingredient()),
                            pack == null ? "" : Decimal.round(line.packs(), 0).toPlainString(),
                            pack == null ? weights.text(line.kilograms()) : "x " + pack.text(),
                            Figures.cash(line.money()),
                            left);
                })
                .toList();
        return new Table(
                List.of(
                        new Column("Ingredient", false),
                        new Column("packs", true),
                        new Column("", false),
                        new Column("money", true),
                        new Column("left, " + weights.unit().symbol(), true)),
                rows);
    }

    private Table blends(PurchasePlan plan) {
        var columns = new ArrayList<Column>();
        columns.add(new Column("Per cent of the batch", false));
        answers.products()
                .forEach(
                        product -> columns.add(new Column(product.best().asked().title(), true)));
        var ids = plan.blends().stream()
                .flatMap(blend -> blend.lines().stream())
                .map(line -> line.use().ingredient())
                .distinct()
                .sorted()
                .toList();
        var rows = new ArrayList<List<String>>();
        for (var id : ids) {
            var cells = new ArrayList<String>();
            cells.add(name(id));
            plan.blends().forEach(blend -> {
                var share = blend.shareOf(id);
                cells.add(share.signum() == 0 ? "" : Figures.percent(share));
            });
            rows.add(cells);
        }
        return new Table(columns, rows);
    }

    /** All that is made; where no plan was found, what would be made of each product at the least cost. */
    private Blend everything() {
        var made = answers.adapted().or(answers::frozen).stream()
                .flatMap(campaign -> campaign.periods().stream())
                .flatMap(plan -> plan.blends().stream())
                .toList();
        var blends = made.isEmpty()
                ? answers.products().stream()
                        .map(product -> product.best().blend())
                        .toList()
                : made;
        var lines = blends.stream().flatMap(blend -> blend.lines().stream()).toList();
        return new Blend(lines, BigFraction.ONE);
    }

    private String name(String id) {
        return first.set().ingredient(id).name();
    }
}
