package panade.document.brief;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.brief.LimitReader.Limits;
import panade.document.selector.Selection;
import panade.document.syntax.Amounts;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Problems;
import panade.domain.Sureness;
import panade.domain.trial.Sure;
import panade.quantity.Quantity;

/** Reads how sure a bound is to hold, and refuses what cannot be meant so. */
record SurenessReader(Problems problems) {
    private static final BigFraction HALF = BigFraction.of(1, 2);
    private static final String EXAMPLE = "95 %";
    private static final String FORM = "a share from 50 % to below 100 %, such as \"" + EXAMPLE + "\"";

    /** Empty where the bound does not ask for it, or not in a way that can be meant. */
    Optional<Sureness> read(ObjectNode bound, Optional<Selection> of, Optional<Selection> per, Limits limits) {
        return bound.field("sure")
                .map(Field::value)
                .filter(node -> isOfContents(node, of, per))
                .filter(node -> isRaw(bound, node))
                .flatMap(this::share)
                .map(share -> Sure.of(share, limits.min() != null && limits.max() != null, null));
    }

    /** The probability that is asked for. */
    Optional<Quantity> share(Node node) {
        return new Amounts(problems)
                .share(node, EXAMPLE)
                .filter(share -> (share.base().compareTo(HALF) >= 0
                                && share.base().compareTo(BigFraction.ONE) < 0)
                        || told(node, "\"" + share.text() + "\" is not how sure a bound can be", "Expected " + FORM));
    }

    private boolean isOfContents(Node node, Optional<Selection> of, Optional<Selection> per) {
        if (of.filter(Selection::plainMass).isPresent()) {
            return told(
                    node,
                    "An amount is weighed and does not vary from lot to lot",
                    "Expected \"sure\" beside a \"property\" only");
        }
        return per.isEmpty()
                || per.get().plainMass()
                || told(
                        node,
                        "\"sure\" cannot be worked out for a ratio of two contents",
                        "Expected a bound on the property itself, or per a kind, ingredient or stage");
    }

    private boolean isRaw(ObjectNode bound, Node node) {
        var state = bound.field("state").map(Field::value);
        return state.isEmpty()
                || (state.get() instanceof TextNode text && text.text().equals("raw"))
                || told(
                        node,
                        "\"sure\" cannot be worked out after cooking",
                        "Expected a bound on the raw batch, without \"state\": \"cooked\"");
    }

    private boolean told(Node node, String what, String advice) {
        problems.add(node.origin(), what, advice + ".");
        return false;
    }
}
