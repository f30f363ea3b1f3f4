package panade.intake.price;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.domain.origin.Origin;
import panade.intake.table.Faults;
import panade.intake.table.Guess;
import panade.intake.table.Numbers;
import panade.intake.table.Table;
import panade.intake.table.Table.Row;
import panade.quantity.CurrencySigns;
import panade.quantity.UnitPrice;
import panade.sheet.Grid.Entry;

/** The price of a row: a number, perhaps with the sign of its currency before it and {@code /lb} behind. */
final class QuotedPrice {
    private static final String ONE = "1/";

    private final Row row;
    private final Map<String, Integer> columns;
    private final Map<String, String> usual;
    private final Faults faults;
    private final Optional<String> money;
    private final Optional<String> weight;

    /**
     * A price.
     *
     * @param columns of the table, by their names
     * @param usual what is meant where the table has no such column
     * @param faults is told what is wrong with it
     */
    QuotedPrice(Row row, Map<String, Integer> columns, Map<String, String> usual, Faults faults) {
        this.row = row;
        this.columns = columns;
        this.usual = usual;
        this.faults = faults;
        var text = text("price").orElse("");
        int slash = text.indexOf('/');
        this.money = Optional.of((slash < 0 ? text : text.substring(0, slash)).strip());
        this.weight = slash < 0
                ? Optional.empty()
                : Optional.of(text.substring(slash + 1).strip());
    }

    /** Whether each price of a table says itself what it is for. */
    static boolean stateWeights(Table table) {
        var at = table.byHeading().get("price");
        return at != null
                && table.rows().stream()
                        .map(row -> row.at(at).text())
                        .filter(text -> !text.isBlank())
                        .allMatch(text -> text.contains("/"));
    }

    /** The number; empty where there is none, which has been told unless the cell is blank. */
    String money() {
        int at = columns.getOrDefault("price", 0);
        var entry = row.at(at);
        var number = CurrencySigns.without(money.orElse(""), currency());
        if (number.isEmpty()) {
            faults.add(
                    row.origin(at),
                    "\"" + entry.text().strip() + "\" bears a sign of money"
                            + (currency().isEmpty()
                                    ? ", and nothing says which currency the prices are in"
                                    : ", and the prices are in " + currency()),
                    "Expected --currency with its code, such as --currency USD, or a number alone.");
            return "";
        }
        return new Numbers(faults)
                .read(new Entry(number.get(), entry.sort()), row.origin(at), BigFraction.ONE)
                .map(found -> found.toPlainString())
                .orElse("");
    }

    private String currency() {
        return text("currency").orElseGet(() -> usual.getOrDefault("currency", ""));
    }

    /** What the price is for: as its own cell says, or the row, or the heads, all of which must agree. */
    String per() {
        var said = text("per");
        var meant = Optional.ofNullable(usual.get("per")).map(this::weighed);
        var own = weight.or(() -> said).or(() -> meant).orElse("");
        for (var other : Stream.concat(said.stream(), meant.stream()).toList()) {
            if (!isSame(own, other)) {
                faults.add(
                        origin(weight.isPresent() ? "price" : "per"),
                        "The price is for " + own + " here, and for " + other + " elsewhere",
                        "Expected one weight that it is for; a column of packs is named --column \"HEADING=pack\".");
            }
        }
        return own;
    }

    /** A weight, or that of the row's pack. */
    private String weighed(String per) {
        return per.equals(Guess.PACK) ? text("pack").orElse("") : per;
    }

    private static boolean isSame(String one, String other) {
        var weight = UnitPrice.perKg(ONE + one);
        return one.equals(other) || (weight.isPresent() && weight.equals(UnitPrice.perKg(ONE + other)));
    }

    private Origin origin(String column) {
        return row.origin(columns.getOrDefault(column, columns.getOrDefault("price", 0)));
    }

    /** What stands in a column; empty where there is none, or nothing in it. */
    private Optional<String> text(String column) {
        return Optional.ofNullable(columns.get(column))
                .map(at -> row.at(at).text().strip())
                .filter(text -> !text.isEmpty());
    }
}
