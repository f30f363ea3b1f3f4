package panade.document.setting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.domain.origin.Origin;
import panade.domain.purchase.Offer;
import panade.domain.purchase.OfferId;
import panade.quantity.Quantity;

/**
 * What is read in place of what is written.
 *
 * @param fields of objects, by where the object stands and by the field's name
 * @param prices money per kilogram as bought
 * @param available what there is to be had
 */
public record Edits(
        Map<Origin, Map<String, Node>> fields, Map<OfferId, BigFraction> prices, Map<OfferId, Quantity> available) {
    /** Everything as it is written. */
    public static final Edits NONE = new Edits(Map.of(), Map.of(), Map.of());

    private static final Set<String> LIMITS = Set.of("min", "max", "maxUse");

    public Edits {
        fields = Map.copyOf(fields);
        prices = Map.copyOf(prices);
        available = Map.copyOf(available);
    }

    /** A document with the fields. */
    public ObjectNode in(ObjectNode root) {
        return fields.isEmpty() ? root : edited(root);
    }

    private Node edited(Node node) {
        if (node instanceof ArrayNode list) {
            return new ArrayNode(
                    list.origin(), list.items().stream().map(this::edited).toList());
        }
        return node instanceof ObjectNode object ? edited(object) : node;
    }

    private ObjectNode edited(ObjectNode object) {
        var edits = new LinkedHashMap<String, Node>(holdsLimits(object) ? fieldsOf(object) : Map.of());
        var all = new ArrayList<Field>();
        for (var field : object.fields()) {
            var fresh = edits.remove(field.name());
            all.add(new Field(field.name(), field.nameOrigin(), fresh == null ? edited(field.value()) : fresh));
        }
        edits.forEach((name, node) -> all.add(new Field(name, node.origin(), node)));
        return new ObjectNode(object.origin(), List.copyOf(all));
    }

    private Map<String, Node> fieldsOf(ObjectNode object) {
        return fields.getOrDefault(object.origin(), Map.of());
    }

    /** In a workbook objects within each other may stand in one cell; what is set is in the one with limits. */
    private static boolean holdsLimits(ObjectNode object) {
        return LIMITS.stream().anyMatch(name -> object.field(name).isPresent());
    }

    /** The offers of the price lists at the prices, and with what there is. */
    public List<Offer> in(List<Offer> offers) {
        return offers.stream().map(this::edited).toList();
    }

    private Offer edited(Offer offer) {
        var priced = offer.withPrice(Objects.requireNonNullElse(prices.get(offer.id()), offer.pricePerKg()));
        var there = available.get(offer.id());
        return there == null ? priced : priced.withAvailable(there);
    }
}
