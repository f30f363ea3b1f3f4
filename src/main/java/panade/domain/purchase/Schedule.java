package panade.domain.purchase;

import java.nio.file.Path;
import java.util.List;

/**
 * What is made when, and at which prices.
 *
 * @param storage what keeping goods costs and allows
 * @param spans in order of time
 */
public record Schedule(Storage storage, List<Span> spans) {
    public Schedule {
        spans = List.copyOf(spans);
    }

    /**
     * A stretch of time.
     *
     * @param name such as a week or a month
     * @param prices its price lists; empty for the briefs' own
     * @param amounts of each product, as typed; empty for those asked for
     */
    public record Span(String name, List<Path> prices, List<String> amounts) {
        public Span {
            prices = List.copyOf(prices);
            amounts = List.copyOf(amounts);
        }
    }
}
