package panade.document.purchase;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.selector.Names;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Schedule;
import panade.domain.purchase.Schedule.Span;
import panade.domain.purchase.Storage;
import panade.domain.purchase.TargetPrice;
import panade.quantity.Quantity;

/** Reads periods with their prices and needs, and what storing between them costs and allows. */
public final class ScheduleReader {
    private final Path folder;
    private final OptionalInt products;
    private final Names names;
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    /**
     * A reader.
     *
     * @param folder that price lists are named from
     * @param products how many products are asked for, where that is known
     * @param set whose ingredients are stored, where that is known
     */
    public ScheduleReader(Path folder, OptionalInt products, Optional<IngredientSet> set, Problems problems) {
        this.folder = folder;
        this.products = products;
        this.names = new Names(set, Set.of(), problems);
        this.problems = problems;
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems);
    }

    public Optional<Schedule> read(Node node) {
        return expect.object(node, "periods, such as {\"periods\": [{\"name\": \"week 1\"}]}")
                .map(this::read);
    }

    private Schedule read(ObjectNode root) {
        new Fields(root, problems, "title", "storage", "periods");
        var storage = value(root, "storage")
                .flatMap(node -> expect.object(node, "storage, such as {\"cost\": \"0.02/kg\"}"))
                .map(this::storage)
                .orElse(Storage.FREE);
        var form = "a list of periods, such as [{\"name\": \"week 1\"}, {\"name\": \"week 2\"}]";
        if (root.field("periods").isEmpty()) {
            problems.add(root.origin(), "\"periods\" is missing", "Expected " + form + ".");
        }
        var spans = new ArrayList<Span>();
        value(root, "periods")
                .flatMap(node -> expect.list(node, form))
                .map(ArrayNode::items)
                .orElse(List.of())
                .forEach(item -> expect.object(item, "a period, such as {\"name\": \"week 1\"}")
                        .ifPresent(object -> spans.add(span(object))));
        return new Schedule(storage, spans);
    }

    private static Optional<Node> value(ObjectNode object, String name) {
        return object.field(name).map(Field::value);
    }

    private Storage storage(ObjectNode object) {
        new Fields(object, problems, "cost", "most", "closing", "keeps");
        return new Storage(
                value(object, "cost")
                        .flatMap(amounts::price)
                        .map(TargetPrice::perKg)
                        .orElse(BigFraction.ZERO),
                byIngredient(object, "most", this::weight),
                byIngredient(object, "closing", this::weight),
                byIngredient(object, "keeps", node -> amounts.count(node, 1).map(BigFraction::intValue)));
    }

    private Optional<BigFraction> weight(Node node) {
        return amounts.weight(node, "50 kg").map(Quantity::base);
    }

    private <T> Map<String, T> byIngredient(ObjectNode storage, String name, Function<Node, Optional<T>> read) {
        var values = new LinkedHashMap<String, T>();
        value(storage, name)
                .flatMap(node -> expect.object(node, "values by ingredient, such as {\"scallion\": ...}"))
                .ifPresent(object -> object.fields().forEach(field -> {
                    var id = names.id(field.name());
                    if (names.knowsIngredient(field.nameOrigin(), id)) {
                        read.apply(field.value()).ifPresent(value -> values.put(id, value));
                    }
                }));
        return values;
    }

    private Span span(ObjectNode object) {
        new Fields(object, problems, "name", "prices", "make");
        var name = value(object, "name")
                .flatMap(node -> expect.text(node, "a name, such as \"week 1\""))
                .map(TextNode::text)
                .orElse("");
        var prices = value(object, "prices")
                .map(node -> expect.texts(node, "a list of price lists, such as [\"prices-spring.csv\"]"))
                .orElse(List.of())
                .stream()
                .map(file -> folder.resolve(file.text()))
                .toList();
        return new Span(name, prices, value(object, "make").map(this::made).orElse(List.of()));
    }

    private List<String> made(Node node) {
        var form = "how much of each product, such as [\"60 lb\", \"40 lb\"]";
        var texts = expect.texts(node, form);
        texts.forEach(text -> amounts.weight(text, "60 lb"));
        if (products.isPresent() && texts.size() != products.getAsInt()) {
            problems.add(
                    node.origin(),
                    texts.size() + " amounts are given where " + products.getAsInt() + " products are asked for",
                    "Expected " + form + ", in the order of the command line.");
        }
        return texts.stream().map(TextNode::text).toList();
    }
}
