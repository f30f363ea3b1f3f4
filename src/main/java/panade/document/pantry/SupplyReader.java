package panade.document.pantry;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import panade.document.kitchen.PantrySheetsReader;
import panade.document.kitchen.Workbook;
import panade.document.offer.PriceList;
import panade.document.offer.PriceListReader;
import panade.document.setting.Edits;
import panade.document.syntax.Expect;
import panade.document.syntax.JsonDocument;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.document.syntax.References;
import panade.domain.pantry.IngredientSet;
import panade.domain.purchase.Offer;

/** Reads the ingredient set and the price lists that a brief names. */
public final class SupplyReader {
    /**
     * What there is to buy.
     *
     * @param complete whether nothing of it was at fault
     */
    public record Supply(Optional<IngredientSet> set, List<Offer> offers, String currency, boolean complete) {}

    private final Problems problems;
    private final boolean wholeChain;
    private final Expect expect;
    private final References references;
    private final Edits edits;
    private final Set<String> read = new HashSet<>();

    /** A reader that tells what is missing only where all the brief is based on could be read. */
    public SupplyReader(Problems problems, boolean wholeChain, Edits edits) {
        this.wholeChain = wholeChain;
        this.edits = edits;
        this.problems = problems;
        this.expect = new Expect(problems);
        this.references = new References(problems);
    }

    public Supply read(ObjectNode brief) {
        int faultsBefore = problems.count();
        var set = required(brief, "ingredients", "\"ingredients\": \"../ingredient-sets/NAME/ingredients.json\"")
                .flatMap(this::set);
        var currency = brief.field("currency")
                .flatMap(field -> expect.text(field.value(), "a currency's code, such as \"USD\""))
                .map(TextNode::text);
        var offers = new ArrayList<Offer>();
        for (var list : lists(brief)) {
            var stated = currency;
            var prices = references.file(list).flatMap(file -> readPrices(file, list, set, stated));
            prices.ifPresent(found -> offers.addAll(found.offers()));
            currency = currency.or(() -> prices.flatMap(PriceList::currency));
        }
        boolean complete = problems.count() == faultsBefore && set.isPresent();
        return new Supply(set, edits.in(offers), currency.orElse(""), complete);
    }

    private Optional<PriceList> readPrices(
            Path file, TextNode node, Optional<IngredientSet> set, Optional<String> currency) {
        if (!read.add(PriceListReader.identity(file))) {
            problems.remark(
                    node.origin(),
                    "The price list \"" + node.text()
                            + "\" is named more than once; it counts once. Name it once, or name the list that was meant.");
            return Optional.empty();
        }
        problems.opened(file.toString());
        return PriceListReader.read(file, file.toString(), set, currency, problems);
    }

    private Optional<IngredientSet> set(Node node) {
        var file = expect.text(node, "the path of an ingredient set").flatMap(references::file);
        return file.flatMap(path -> {
            problems.opened(path.toString());
            return root(path).flatMap(root -> SetReader.read(root, problems));
        });
    }

    private Optional<? extends Node> root(Path file) {
        Optional<? extends Node> root = Workbook.isNamed(file)
                ? PantrySheetsReader.read(file, file.toString(), problems)
                : JsonDocument.read(file, file.toString(), problems);
        return root.map(node -> node instanceof ObjectNode object ? edits.in(object) : node);
    }

    private List<TextNode> lists(ObjectNode brief) {
        var node = required(brief, "prices", "\"prices\": [\"../ingredient-sets/NAME/prices.csv\"]");
        var form = "a list of price lists, such as [\"../ingredient-sets/NAME/prices.csv\"]";
        if (node.isPresent()
                && node.get() instanceof ArrayNode list
                && list.items().isEmpty()) {
            problems.add(list.origin(), "No price list is named", "Expected " + form + ".");
        }
        return node.map(found -> expect.texts(found, form)).orElse(List.of());
    }

    private Optional<Node> required(ObjectNode brief, String name, String example) {
        var value = brief.field(name).map(Field::value);
        if (value.isEmpty() && wholeChain) {
            problems.add(brief.origin(), "\"" + name + "\" is missing", "Expected it in the brief: " + example + ".");
        }
        return value;
    }
}
