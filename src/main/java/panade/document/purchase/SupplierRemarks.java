package panade.document.purchase;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import panade.document.kitchen.Workbook;
import panade.document.offer.PriceListReader;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.domain.purchase.Offer;

/** Remarks on suppliers' names that stand in a price list and not among the terms beside it, or the other way round. */
public record SupplierRemarks(List<Offer> offers, Problems problems) {
    private static final String TERMS = "suppliers.csv";

    public void check() {
        termFiles(offers).stream().filter(Files::isReadable).forEach(this::check);
    }

    /** Where the terms of offers would stand: beside each price list, or in the same workbook. */
    public static List<Path> termFiles(List<Offer> offers) {
        return offers.stream().map(SupplierRemarks::termFile).distinct().toList();
    }

    private static Path termFile(Offer offer) {
        var list = Path.of(offer.origin().file());
        return Workbook.isNamed(list) ? list : folder(offer).resolve(TERMS);
    }

    private static Path folder(Offer offer) {
        return Objects.requireNonNullElse(Path.of(offer.origin().file()).getParent(), Path.of(""));
    }

    /** What is wrong with the terms themselves is told where they are checked, or read to order by. */
    private void check(Path file) {
        var terms = StoreRoomReader.suppliers(file);
        var folder = Objects.requireNonNullElse(file.getParent(), Path.of(""));
        Map<String, Origin> selling = new LinkedHashMap<>();
        offers.stream()
                .filter(offer ->
                        termFile(offer).equals(file) && offer.pricePerKg().signum() > 0)
                .forEach(offer -> selling.putIfAbsent(offer.supplier(), offer.origin()));
        var anywhere = Workbook.isNamed(file) ? selling.keySet() : sellers(folder);
        selling.forEach((name, origin) -> {
            if (!terms.isEmpty() && !terms.containsKey(name)) {
                problems.remark(
                        origin,
                        "\"" + name + "\" has no terms in " + file
                                + ", so no minimum order and no delivery are counted." + near(name, terms.keySet()));
            }
        });
        terms.forEach((name, origin) -> {
            if (!anywhere.contains(name)) {
                problems.remark(
                        origin,
                        "\"" + name + "\" sells nothing in the price lists beside, so these terms are never used."
                                + near(name, selling.keySet()));
            }
        });
    }

    private static String near(String name, Set<String> names) {
        return Problems.nearest(name, names)
                .map(found -> " Did you mean \"" + found + "\"?")
                .orElse(" Write the name as the other file does, or add it there.");
    }

    /** Suppliers of every price list in a folder, for a brief need not name them all. */
    private Set<String> sellers(Path folder) {
        var sellers = new LinkedHashSet<String>();
        offers.forEach(offer -> sellers.add(offer.supplier()));
        try (var files = Files.newDirectoryStream(folder, "*.csv")) {
            for (var file : files) {
                sellers.addAll(PriceListReader.suppliers(file));
            }
        } catch (IOException unreadable) {
            return sellers; // what cannot be read sells nothing
        }
        return sellers;
    }
}
