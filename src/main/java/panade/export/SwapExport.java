package panade.export;

import java.util.Set;
import java.util.TreeSet;
import panade.cost.LabelStudy;
import panade.explain.conflict.Conflict.Change;
import panade.explain.conflict.Conflict.Relaxation;
import panade.label.Allergens;
import panade.label.Statement;
import panade.plan.Outcome.Blended;
import panade.substitute.Substitution;
import panade.substitute.Substitution.StandIn;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes what replaces an ingredient. */
public final class SwapExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private SwapExport() {}

    /** The result of {@code swap}. */
    public static String of(Substitution swap) {
        var result = NODES.objectNode();
        var out = NODES.arrayNode();
        swap.out().forEach(out::add);
        result.set("out", out);
        result.set("before", JsonExport.node(swap.before()));
        result.set("after", JsonExport.node(swap.after()));
        var standIns = NODES.arrayNode();
        swap.standIns().forEach(standIn -> standIns.add(standIn(swap, standIn)));
        result.set("standIns", standIns);
        if (swap.after() instanceof Blended after) {
            result.set("allergens", allergens(swap.before(), after));
            result.set("label", LabelExport.of(LabelStudy.between(swap.before(), after)));
        }
        return RemarkExport.print(result, swap.before().asked().remarks());
    }

    private static ObjectNode standIn(Substitution swap, StandIn standIn) {
        var node = NODES.objectNode();
        node.put("ingredient", standIn.ingredient());
        var blended = standIn.blended();
        if (blended == null && standIn.undecided() != null) {
            return node.put("undecided", standIn.undecided());
        }
        if (blended == null) {
            node.set("fails", standIn.failure() == null ? NODES.nullNode() : failure(standIn.failure()));
            return node;
        }
        var cost = blended.blend().costPerKg();
        JsonExport.put(node, "share", standIn.share());
        JsonExport.put(node, "costPerKg", cost);
        JsonExport.put(node, "changePerKg", cost.subtract(swap.before().blend().costPerKg()));
        node.set("allergens", allergens(swap.before(), blended));
        var statement = NODES.arrayNode();
        Statement.names(blended.brief(), blended.blend()).forEach(statement::add);
        node.set("statement", statement);
        return node;
    }

    private static ObjectNode failure(Relaxation cure) {
        var moves = (Change.Moves) cure.change();
        var node = NODES.objectNode();
        node.put("path", cure.path());
        var origin = cure.origin();
        if (origin != null) {
            node.put("file", origin.file());
        }
        node.put("name", cure.name());
        JsonExport.put(node, "reaches", moves.to());
        JsonExport.put(node, "needs", moves.from());
        node.put("unit", moves.unit().symbol());
        return node;
    }

    private static ObjectNode allergens(Blended before, Blended after) {
        var first = Allergens.stated(before.brief(), before.blend());
        var then = Allergens.stated(after.brief(), after.blend());
        var node = NODES.objectNode();
        node.set("added", difference(then, first));
        node.set("removed", difference(first, then));
        node.set(
                "notKnown",
                difference(
                        Allergens.notKnown(after.brief(), after.blend()),
                        Allergens.notKnown(before.brief(), before.blend())));
        return node;
    }

    private static ArrayNode difference(Set<String> a, Set<String> b) {
        var rest = new TreeSet<>(a);
        rest.removeAll(b);
        var node = NODES.arrayNode();
        rest.forEach(node::add);
        return node;
    }
}
