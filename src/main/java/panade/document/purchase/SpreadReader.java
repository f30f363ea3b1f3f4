package panade.document.purchase;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.offer.CsvTable;
import panade.document.offer.OfferRow;
import panade.document.offer.PriceCell;
import panade.document.syntax.Problems;
import panade.domain.Brief;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.quantity.Dimension;
import panade.quantity.Quantity;

/** Reads how far prices may be off: an ingredient, perhaps one supplier of it, and a share of its price. */
public final class SpreadReader {
    private static final CsvTable.Kind KIND = new CsvTable.Kind(
            "a list of spreads", List.of("ingredient", "supplier", "spread"), List.of("ingredient", "spread"));

    private final Brief brief;
    private final Problems problems;
    private final Map<OfferId, BigFraction> spreads = new LinkedHashMap<>();

    public SpreadReader(Brief brief, Problems problems) {
        this.brief = brief;
        this.problems = problems;
    }

    /** The spread of every offer that the list names; a row with a supplier goes before one without. */
    public Map<OfferId, BigFraction> read(Path file) {
        CsvTable.read(file, file.toString(), KIND, problems).ifPresent(rows -> {
            rows.stream().filter(row -> supplier(row).isEmpty()).forEach(this::note);
            rows.stream().filter(row -> supplier(row).isPresent()).forEach(this::note);
        });
        return spreads;
    }

    private static Optional<String> supplier(CsvTable.Row row) {
        return Optional.ofNullable(row.cells().get("supplier"))
                .map(PriceCell::content)
                .filter(name -> !name.isEmpty());
    }

    private void note(CsvTable.Row row) {
        var id = new OfferRow(row.cells(), problems).ingredient(Optional.of(brief.set()));
        var spread = Optional.ofNullable(row.cells().get("spread")).flatMap(SpreadReader::share);
        if (id.isEmpty() || spread.isEmpty()) {
            return;
        }
        var wanted = supplier(row);
        var offers = brief.offersFor(id.get()).stream()
                .filter(offer -> wanted.isEmpty() || offer.supplier().equals(wanted.get()))
                .toList();
        offers.forEach(offer -> spreads.put(offer.id(), spread.get()));
        if (offers.isEmpty() && wanted.isPresent() && brief.candidates().contains(id.get())) {
            var sellers =
                    brief.offersFor(id.get()).stream().map(Offer::supplier).toList();
            problems.unknown(
                    row.origin(),
                    "\"" + wanted.get() + "\" does not sell " + id.get(),
                    wanted.get(),
                    sellers,
                    "Expected a supplier in the price lists.");
        }
    }

    private static Optional<BigFraction> share(PriceCell cell) {
        var share = Quantity.parse(cell.content())
                .filter(quantity -> quantity.unit().dimension() == Dimension.SHARE)
                .map(Quantity::base)
                .filter(base -> base.signum() >= 0 && base.compareTo(BigFraction.ONE) < 0);
        return share.isPresent()
                ? share
                : cell.refuse(
                        "\"" + cell.content() + "\" is not a spread",
                        "Expected a share of the price from 0 % to below 100 %, such as 15 %.");
    }
}
