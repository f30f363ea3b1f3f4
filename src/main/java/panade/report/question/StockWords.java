package panade.report.question;

import java.util.List;
import panade.report.Block;
import panade.report.Block.Heading;
import panade.report.Block.Points;
import panade.result.BuyResult.OnHand;

/** Words what is on hand: what to use first, what is left of it, and what no plan counts on. */
record StockWords(List<OnHand> stock, StockWeights weights) {
    List<Block> blocks() {
        return stock.isEmpty()
                ? List.of()
                : List.of(
                        new Heading("On hand"),
                        new Points(stock.stream().map(this::words).toList()));
    }

    private String words(OnHand stock) {
        var date = stock.bestBefore();
        var words =
                weights.text(stock.kilograms()) + " of " + stock.name() + (date == null ? "" : ", best before " + date);
        if (stock.past()) {
            return words + ": that day is past, so it is not counted on.";
        }
        if (!stock.offered()) {
            return words + ": no supplier offers it for these products, so no plan uses it.";
        }
        var left = stock.leftAtEnd();
        return words
                + (date == null ? "" : ": use it by then")
                + (left == null ? "" : "; the shelf holds " + weights.text(left) + " at the end")
                + ".";
    }
}
