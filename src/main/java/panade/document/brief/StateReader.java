package panade.document.brief;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.brief.BoundReader.Draft;
import panade.document.selector.Names;
import panade.document.selector.SelectorReader;
import panade.document.syntax.Node.ObjectNode;
import panade.domain.Bound;
import panade.domain.Cooking;
import panade.domain.LimitKind;
import panade.domain.Practice;

/** Puts bounds on the cooked state into terms of the raw batch, once it is known what cooking takes. */
record StateReader(Names names, Map<String, BigFraction> loss) {
    /** The draft in terms of the raw batch. */
    Draft settled(Draft draft) {
        return names.set()
                .filter(set -> draft.bound().state().equals("cooked"))
                .map(set -> new Cooking(loss, set).cooked(draft.bound(), SelectorReader.massOfAll(names)))
                .map(bound -> new Draft(bound, draft.perOrigin()))
                .orElse(draft);
    }

    /** All that needs values: the bounds, and the cooked weight where cost is counted per that. */
    List<Draft> withCost(List<Draft> drafts, Practice practice, ObjectNode root) {
        var weight = practice.cookedWeight();
        if (!practice.perCooked() || weight == null) {
            return drafts;
        }
        var origin =
                root.field("costBasis").map(field -> field.value().origin()).orElse(root.origin());
        var bound =
                new Bound(LimitKind.COST_BASIS, "costBasis", "/costBasis", weight, null, null, null, "cooked", origin);
        return Stream.concat(drafts.stream(), Stream.of(new Draft(bound, null))).toList();
    }
}
