package panade.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import panade.buy.PurchaseAnswers;
import panade.domain.purchase.StoreRoom;
import panade.domain.purchase.StoreRoom.Stock;
import panade.report.Block.Heading;
import panade.report.Block.Points;

/** Words what is on hand: what to use first, what is left of it, and what no plan counts on. */
record StockWords(PurchaseAnswers answers, StoreRoom room) {
    List<Block> blocks() {
        var points = room.stock().stream()
                .sorted(Comparator.comparing(StockWords::date))
                .map(this::words)
                .toList();
        return points.isEmpty() ? new ArrayList<>() : List.of(new Heading("On hand"), new Points(points));
    }

    private static LocalDate date(Stock stock) {
        return Objects.requireNonNullElse(stock.bestBefore(), LocalDate.MAX);
    }

    private String words(Stock stock) {
        var words = weights().text(stock.kilograms()) + " of "
                + answers.products()
                        .get(0)
                        .best()
                        .asked()
                        .set()
                        .ingredient(stock.ingredient())
                        .name()
                + (stock.bestBefore() == null ? "" : ", best before " + stock.bestBefore());
        if (stock.isPast()) {
            return words + ": that day is past, so it is not counted on.";
        }
        if (!isPlanned(stock)) {
            return words + ": no supplier offers it for these products, so no plan uses it.";
        }
        return words + (stock.bestBefore() == null ? "" : ": use it by then") + left(stock.ingredient()) + ".";
    }

    private String left(String ingredient) {
        return answers.adapted().stream()
                .map(plan -> plan.periods().get(plan.periods().size() - 1))
                .flatMap(plan -> plan.store().stream())
                .filter(goods -> goods.ingredient().equals(ingredient))
                .map(goods -> "; the shelf holds " + weights().text(goods.left()) + " at the end")
                .findFirst()
                .orElse("");
    }

    private StockWeights weights() {
        return StockWeights.of(answers.products().get(0).best().asked());
    }

    private boolean isPlanned(Stock stock) {
        return answers.products().stream()
                .anyMatch(product -> product.best().asked().candidates().contains(stock.ingredient()));
    }
}
