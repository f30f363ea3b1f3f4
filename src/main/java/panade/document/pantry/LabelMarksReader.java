package panade.document.pantry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Node;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;
import panade.document.syntax.Problems;
import panade.domain.pantry.IsolatedFibre;
import panade.domain.pantry.LabelMarks;
import panade.domain.pantry.LabelMarks.Additive;

/** Reads what an ingredient set says of an ingredient's place in the laws on labels. */
final class LabelMarksReader {
    private static final String NAMES = "names by law, such as {\"us\": \"canola oil\", \"eu\": \"rapeseed oil\"}";
    private static final String ADDITIVE =
            "the class it works as, such as {\"class\": \"stabiliser\", \"number\": \"E 461\"}";
    private static final String FIBRE = "what isolated fibre it is, such as \"methylcellulose\", or \"intact\"";

    private final Problems problems;
    private final Expect expect;

    LabelMarksReader(Problems problems) {
        this.problems = problems;
        this.expect = new Expect(problems);
    }

    LabelMarks read(Fields ingredient) {
        return new LabelMarks(
                ingredient.get("labelIn").map(this::names).orElse(Map.of()),
                ingredient.get("additive").flatMap(this::additive).orElse(null),
                fibre(ingredient.get("fibre").flatMap(node -> expect.text(node, FIBRE))),
                ingredient.get("colours").filter(this::isTrue).isPresent());
    }

    private Map<String, String> names(Node node) {
        var names = new LinkedHashMap<String, String>();
        expect.object(node, NAMES).ifPresent(found -> {
            var fields = new Fields(found, problems, "us", "eu");
            for (var law : List.of("us", "eu")) {
                text(fields, law, NAMES).ifPresent(name -> names.put(law, name.text()));
            }
        });
        return names;
    }

    private Optional<Additive> additive(Node node) {
        var object = expect.object(node, ADDITIVE);
        return object.flatMap(found -> additive(new Fields(found, problems, "class", "number"), found));
    }

    private Optional<Additive> additive(Fields fields, ObjectNode object) {
        var category = text(fields, "class", ADDITIVE);
        if (category.isEmpty() && fields.get("class").isEmpty()) {
            problems.add(object.origin(), "\"class\" is missing", "Expected " + ADDITIVE + ".");
        }
        var number = text(fields, "number", ADDITIVE).map(TextNode::text).orElse("");
        return category.filter(found -> isOneOf(found, Additive.CLASSES, "class of additives"))
                .map(found -> new Additive(found.text(), number));
    }

    private @Nullable String fibre(Optional<TextNode> stated) {
        return stated.filter(found -> found.text().equals(IsolatedFibre.INTACT)
                        || IsolatedFibre.named(found.text()).isPresent()
                        || isOneOf(found, IsolatedFibre.names(), "fibre"))
                .map(TextNode::text)
                .orElse(null);
    }

    private boolean isOneOf(TextNode text, List<String> valid, String sort) {
        if (!valid.contains(text.text())) {
            problems.unknown(
                    text.origin(),
                    "No " + sort + " is called \"" + text.text() + "\"",
                    text.text(),
                    valid,
                    "Expected one of " + String.join(", ", valid) + ".");
        }
        return valid.contains(text.text());
    }

    private Optional<TextNode> text(Fields fields, String name, String form) {
        return fields.get(name).flatMap(node -> expect.text(node, form));
    }

    private boolean isTrue(Node node) {
        if (node instanceof WordNode word
                && (word.word().equals("true") || word.word().equals("false"))) {
            return word.word().equals("true");
        }
        expect.refuse(node, "true where it is there for its colour as well, as paprika is");
        return false;
    }
}
