package panade.document.brief;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import panade.document.selector.Names;
import panade.document.syntax.Expect;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ArrayNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;
import panade.domain.SameLabel;

/** Reads which label must stay true: the brief's own, or names in their order. */
final class SameLabelReader {
    private static final String FORM =
            "true for the label that the brief has as it is written, or the names printed on it in their order";

    private final Names names;
    private final Expect expect;

    SameLabelReader(Names names) {
        this.names = names;
        this.expect = new Expect(names.problems());
    }

    Optional<SameLabel> read(Node node) {
        if (node instanceof WordNode word && word.word().equals("true")) {
            return Optional.of(new SameLabel(List.of(), null, node.origin()));
        }
        if (node instanceof WordNode word && word.word().equals("false")) {
            return Optional.empty();
        }
        if (!(node instanceof ArrayNode list) || list.items().isEmpty()) {
            return expect.refuse(node, FORM);
        }
        var printed = printed(node);
        return printed.isEmpty() ? Optional.empty() : Optional.of(new SameLabel(printed, null, node.origin()));
    }

    private List<String> printed(Node node) {
        var labels = labels();
        var printed = new ArrayList<String>();
        for (var text : expect.texts(node, FORM)) {
            if (names.set().isPresent() && !labels.contains(text.text())) {
                names.problems()
                        .unknown(
                                text.origin(),
                                "No ingredient has the label name \"" + text.text() + "\"",
                                text.text(),
                                labels,
                                "Expected the \"label\" of one in the ingredient set.");
            } else if (printed.contains(text.text())) {
                twice(text);
            } else {
                printed.add(text.text());
            }
        }
        return printed;
    }

    private void twice(TextNode text) {
        names.problems()
                .add(text.origin(), "\"" + text.text() + "\" is named twice", "Expected each name on the label once.");
    }

    private Set<String> labels() {
        var labels = new LinkedHashSet<String>();
        names.set().ifPresent(set -> set.ingredients().values().forEach(each -> labels.add(each.label())));
        return labels;
    }
}
