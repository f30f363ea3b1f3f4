package panade.document.offer;

import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Problems;
import panade.domain.pantry.IngredientSet;
import panade.quantity.Quantity;

/** One row of a price list, cell by cell. */
public record OfferRow(Map<String, PriceCell> cells, Problems problems) {

    /** The ingredient's id, known to the set where there is one. */
    public Optional<String> ingredient(Optional<IngredientSet> set) {
        var id = name("ingredient", "the id of an ingredient")
                .map(name -> set.flatMap(found -> found.idOf(name)).orElse(name));
        if (id.isPresent() && set.isPresent() && !set.get().ingredients().containsKey(id.get())) {
            problems.unknown(
                    cell("ingredient").orElseThrow().origin(),
                    "There is no ingredient \"" + id.get() + "\" in the set",
                    id.get(),
                    set.get().ingredients().keySet(),
                    "Expected the id of an ingredient of the set.");
            return Optional.empty();
        }
        return id;
    }

    /** A text that must be there. */
    public Optional<String> name(String column, String expected) {
        var cell = cell(column).orElseThrow();
        return cell.isBlank()
                ? cell.refuse("The " + column + " is missing", "Expected " + expected + ".")
                : Optional.of(cell.content());
    }

    /** Money per kilogram as bought, in a currency that may be empty. */
    Optional<BigFraction> pricePerKg(String currency) {
        var price = cell("price").orElseThrow().price(currency);
        var per = cell("per").orElseThrow().per();
        return price.flatMap(money -> per.map(money::divide));
    }

    /** A weight that need not be given. */
    public Optional<Quantity> amount(String column) {
        return cell(column).flatMap(PriceCell::amount);
    }

    /** The currency so far, or this row's when it is the first to say; another one is told. */
    Optional<String> currency(Optional<String> soFar) {
        var stated = cell("currency").filter(cell -> !cell.isBlank());
        if (stated.isPresent() && soFar.isPresent() && !stated.get().content().equals(soFar.get())) {
            stated.get()
                    .refuse(
                            "The price is in \"" + stated.get().content() + "\", and the rest in \"" + soFar.get()
                                    + "\"",
                            "Expected prices in " + soFar.get() + ".");
        }
        return soFar.or(() -> stated.map(PriceCell::content));
    }

    String note() {
        return cell("note").map(PriceCell::content).orElse("");
    }

    private Optional<PriceCell> cell(String column) {
        return Optional.ofNullable(cells.get(column));
    }
}
