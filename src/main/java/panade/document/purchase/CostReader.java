package panade.document.purchase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Problems;
import panade.domain.purchase.Costs;
import panade.domain.purchase.Shelf;
import panade.domain.purchase.TargetPrice;
import panade.quantity.Quantity;

/** Reads what a product costs beside its ingredients, and what it sells for. */
public final class CostReader {
    private final Problems problems;
    private final Expect expect;
    private final Amounts amounts;

    public CostReader(Problems problems, String currency) {
        this.problems = problems;
        this.expect = new Expect(problems);
        this.amounts = new Amounts(problems, currency);
    }

    private static Optional<Node> value(ObjectNode object, String name) {
        return object.field(name).map(Field::value);
    }

    public Optional<Costs> costs(Node node) {
        return expect.object(node, "costs, such as {\"packaging\": \"0.31/lb\"}")
                .map(this::costs);
    }

    private Costs costs(ObjectNode costs) {
        new Fields(costs, problems, "labour", "packaging", "overhead", "processLoss");
        var labour = value(costs, "labour")
                .flatMap(node -> expect.object(node, "labour, such as {\"minutes\": 25, \"perHour\": 21.84}"))
                .orElse(null);
        if (labour != null) {
            new Fields(labour, problems, "minutes", "minutesPerLb", "perHour");
        }
        return new Costs(
                number(labour, "minutes"),
                number(labour, "minutesPerLb"),
                number(labour, "perHour"),
                price(costs, "packaging"),
                price(costs, "overhead"),
                value(costs, "processLoss")
                        .flatMap(loss -> amounts.share(loss, "3 %"))
                        .map(Quantity::base)
                        .orElse(BigFraction.ZERO));
    }

    private BigFraction number(@Nullable ObjectNode labour, String name) {
        return Optional.ofNullable(labour)
                .flatMap(object -> value(object, name))
                .flatMap(node -> amounts.notNegative(node, "a number, such as 25"))
                .orElse(BigFraction.ZERO);
    }

    private BigFraction price(ObjectNode costs, String name) {
        return value(costs, name)
                .flatMap(amounts::price)
                .map(TargetPrice::perKg)
                .orElse(BigFraction.ZERO);
    }

    public Optional<Shelf> shelf(Node node) {
        var shelf = expect.object(node, "a shelf price, such as {\"price\": \"6.99/lb\", \"margins\": [\"35 %\"]}");
        shelf.ifPresent(found -> new Fields(found, problems, "price", "margins"));
        var price = shelf.flatMap(found -> value(found, "price")).flatMap(amounts::price);
        var margins = new ArrayList<BigFraction>();
        shelf.flatMap(found -> value(found, "margins"))
                .flatMap(found -> expect.list(found, "a list of margins, such as [\"35 %\", \"18 %\"]"))
                .map(ArrayNode::items)
                .orElse(List.of())
                .forEach(item -> amounts.share(item, "35 %").ifPresent(margin -> margins.add(margin.base())));
        return price.map(found -> new Shelf(found, margins));
    }
}
