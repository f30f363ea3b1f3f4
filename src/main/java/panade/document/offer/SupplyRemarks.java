package panade.document.offer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.origin.Origin;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;
import panade.quantity.Decimal;

/** Remarks on price lists: what no list sells, and rows of which one counts and the others do not. */
public record SupplyRemarks(IngredientSet set, List<Offer> offers, Problems problems) {
    private static final Set<String> PLACES = Set.of("bounds", "stages", "rules");
    private static final Set<String> NAMES =
            Set.of("ingredient", "ingredients", "whenUsed", "if", "then", "neverTogether");
    private static final int FEW = 8;
    private static final int DIGITS = 6;

    /** What makes two rows offers of the same goods. */
    private record Goods(String ingredient, String supplier, String pack) {}

    /**
     * Looks the brief over.
     *
     * @param keptOut ids that the brief or the command line keeps out, of which no price is needed
     */
    public void check(ObjectNode brief, Set<String> keptOut) {
        var unsold = new LinkedHashSet<>(set.ingredients().keySet());
        offers.forEach(offer -> unsold.remove(offer.ingredient()));
        unsold.removeAll(keptOut);
        var told = new LinkedHashSet<String>();
        brief.fields().stream()
                .filter(field -> PLACES.contains(field.name()))
                .forEach(field -> named(field.value(), unsold, told));
        unsold.removeAll(told);
        brief.field("prices")
                .filter(field -> !unsold.isEmpty())
                .ifPresent(field -> tellUnsold(field.value().origin(), unsold));
        tellTwice();
    }

    private void named(Node node, Set<String> unsold, Set<String> told) {
        if (node instanceof ArrayNode list) {
            list.items().forEach(item -> named(item, unsold, told));
        } else if (node instanceof ObjectNode object) {
            object.fields().forEach(field -> named(field, unsold, told));
        }
    }

    private void named(Field field, Set<String> unsold, Set<String> told) {
        if (!NAMES.contains(field.name())) {
            named(field.value(), unsold, told);
        } else if (field.value() instanceof ObjectNode weights) {
            weights.fields().forEach(weight -> tell(weight.nameOrigin(), weight.name(), unsold, told));
        } else {
            texts(field.value()).forEach(text -> tell(text.origin(), text.text(), unsold, told));
        }
    }

    private static List<TextNode> texts(Node node) {
        var all = node instanceof ArrayNode list ? list.items() : List.of(node);
        return all.stream()
                .filter(TextNode.class::isInstance)
                .map(TextNode.class::cast)
                .toList();
    }

    /** An ingredient of which another lot is sold is not missed. */
    private void tell(Origin origin, String id, Set<String> unsold, Set<String> told) {
        if (unsold.contains(id) && unsold.containsAll(set.withVariants(id)) && told.add(id)) {
            problems.remark(
                    origin,
                    "No price list sells \"" + id + "\", so there can be none of it in a blend."
                            + " Add its row to a price list, or take it out here.");
        }
    }

    private void tellUnsold(Origin origin, Set<String> unsold) {
        var few = unsold.stream().limit(FEW).toList();
        var rest = unsold.size() > FEW ? " and " + (unsold.size() - FEW) + " more" : "";
        problems.remark(
                origin,
                "No price list sells \"" + String.join("\", \"", few) + "\"" + rest
                        + ", so there can be none of " + (unsold.size() == 1 ? "it" : "them")
                        + " in a blend. Add a row with a price for what should be thought of.");
    }

    private void tellTwice() {
        Map<Goods, List<Offer>> rows = new LinkedHashMap<>();
        offers.forEach(offer ->
                rows.computeIfAbsent(goods(offer), goods -> new ArrayList<>()).add(offer));
        rows.values().stream().filter(same -> same.size() > 1).forEach(this::tellTwice);
    }

    private static Goods goods(Offer offer) {
        var pack = offer.pack();
        return new Goods(
                offer.ingredient(),
                offer.supplier(),
                pack == null ? "" : pack.base().toString());
    }

    /** Where the cheaper goods run out the dearer ones are bought as well, and both rows are meant. */
    private void tellTwice(List<Offer> same) {
        var cheapest =
                same.stream().min(Comparator.comparing(Offer::pricePerKg)).orElseThrow();
        if (cheapest.available() == null) {
            var last = same.get(same.size() - 1);
            var prices = new TreeSet<String>();
            same.forEach(offer -> prices.add(money(offer.pricePerKg())));
            problems.remark(
                    last.origin(),
                    "\"" + last.ingredient() + "\" from \"" + last.supplier() + "\" has " + same.size()
                            + " prices for the same pack, " + String.join(" and ", prices)
                            + " per kg: the lowest counts, " + money(cheapest.pricePerKg())
                            + ". Delete the rows that no longer hold (" + places(same) + ").");
        }
    }

    private static String places(List<Offer> same) {
        return String.join(
                ", ",
                same.stream()
                        .map(offer -> Path.of(offer.origin().file()).getFileName() + " "
                                + offer.origin().spot())
                        .toList());
    }

    private static String money(BigFraction perKg) {
        return Decimal.significant(perKg, DIGITS).toPlainString();
    }
}
