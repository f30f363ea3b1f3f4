package panade.report.question;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.result.BuyResult.SmallOrder;

/**
 * Words which suppliers' minimum orders would not be reached if goods were bought by exact weight.
 *
 * @param periods how many periods are planned
 */
record SmallOrderWords(List<SmallOrder> orders, int periods, Function<BigFraction, String> money) {
    /** One line a supplier. */
    List<String> lines() {
        var bySupplier = new LinkedHashMap<String, List<SmallOrder>>();
        orders.forEach(order -> bySupplier
                .computeIfAbsent(order.supplier(), supplier -> new ArrayList<>())
                .add(order));
        return bySupplier.values().stream().map(this::words).toList();
    }

    private String words(List<SmallOrder> small) {
        var supplier = small.get(0).supplier();
        return "Bought by exact weight, " + supplier + " would sell for " + range(small, SmallOrder::goods)
                + when(small) + ": " + range(small, SmallOrder::missing) + " short of the minimum order.";
    }

    private String when(List<SmallOrder> small) {
        return periods == 1 ? "" : " in " + small.size() + " of " + periods + " periods";
    }

    private String range(List<SmallOrder> small, Function<SmallOrder, BigFraction> figure) {
        var figures = small.stream().map(figure).toList();
        var least = figures.stream().min(Comparator.naturalOrder());
        var most = figures.stream().max(Comparator.naturalOrder());
        var low = least.map(money).orElse("");
        var high = most.map(money).orElse("");
        return low.equals(high) ? low : low + " to " + high;
    }
}
