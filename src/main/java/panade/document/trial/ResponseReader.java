package panade.document.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import panade.document.selector.Names;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Ids;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.document.syntax.Node.WordNode;
import panade.domain.trial.Lever;
import panade.domain.trial.Response;
import panade.domain.trial.Response.Scale;
import panade.learn.Form;

/** Reads what is measured, and in which form it may follow its levers. */
final class ResponseReader {
    private static final String FORM = "responses by name, such as {\"cook loss\": {\"unit\": \"%\"}}";
    private static final List<String> FORMS = List.of("linear", "quadratic", "special cubic");

    private final Names names;
    private final Expect expect;

    ResponseReader(Names names) {
        this.names = names;
        this.expect = new Expect(names.problems());
    }

    /**
     * The responses of a document.
     *
     * @param forms what it says of their forms; null when nothing
     */
    List<Response> read(Node node, List<Lever> shared, @Nullable Node forms) {
        var responses = new ArrayList<Response>();
        var wishes = Optional.ofNullable(forms)
                .flatMap(found ->
                        expect.object(found, "forms by response, such as {\"break\": {\"form\": \"linear\"}}"));
        var all = expect.object(node, FORM);
        wishes.ifPresent(found -> all.ifPresent(known -> checkNames(found, known)));
        all.ifPresent(found -> found.fields().forEach(field -> {
            var wish = wishes.flatMap(each -> each.field(field.name())).map(Field::value);
            response(field, shared, wish).ifPresent(responses::add);
        }));
        return responses;
    }

    private void checkNames(ObjectNode forms, ObjectNode responses) {
        var known = responses.fields().stream().map(Field::name).toList();
        forms.fields().stream()
                .filter(field -> !known.contains(field.name()))
                .forEach(field -> names.problems()
                        .unknown(
                                field.nameOrigin(),
                                "No response is called \"" + field.name() + "\"",
                                field.name(),
                                known,
                                "Expected one that stands under \"responses\"."));
    }

    private Optional<Response> response(Field field, List<Lever> shared, Optional<Node> wish) {
        new Ids(names.problems()).check(field.nameOrigin(), field.name(), "response");
        var object = expect.object(field.value(), FORM);
        return object.map(found -> {
            var fields = new Fields(found, names.problems(), "unit", "scale", "stands for", "levers");
            var unit = fields.get("unit").flatMap(node -> expect.text(node, "a unit, such as \"g\""));
            var trait = fields.get("stands for").flatMap(node -> expect.text(node, "a trait, such as \"heat-set\""));
            trait.ifPresent(text -> names.knowsProperty(text.origin(), text.text()));
            var own = fields.get("levers").map(node -> new LeverReader(names).read(node));
            var form = wish.flatMap(node -> expect.object(node, "such as {\"form\": \"linear\", \"constant\": true}"));
            form.ifPresent(each -> new Fields(each, names.problems(), "form", "constant", "prior"));
            form.ifPresent(this::checkPrior);
            return new Response(
                    field.name(),
                    unit.map(TextNode::text).orElse(""),
                    fields.get("scale").flatMap(this::scale).orElse(null),
                    trait.map(TextNode::text).orElse(null),
                    own.orElse(shared),
                    form.flatMap(each -> each.field("form")).flatMap(this::form).orElse(null),
                    form.flatMap(each -> each.field("constant"))
                            .map(this::constant)
                            .orElse(null),
                    field.nameOrigin());
        });
    }

    private void checkPrior(ObjectNode form) {
        form.field("prior")
                .map(Field::value)
                .filter(node -> !(node instanceof TextNode text && text.text().equals("none")))
                .ifPresent(node -> expect.refuse(node, "\"none\", which is least squares"));
    }

    private Optional<Form> form(Field field) {
        var text = expect.text(field.value(), "a form: " + String.join(", ", FORMS));
        var form = text.flatMap(found -> Form.named(found.text()));
        text.filter(found -> form.isEmpty())
                .ifPresent(found -> names.problems()
                        .unknown(
                                found.origin(),
                                "\"" + found.text() + "\" is not a form",
                                found.text(),
                                FORMS,
                                "Expected one of: " + String.join(", ", FORMS) + "."));
        return form;
    }

    private @Nullable Boolean constant(Field field) {
        var word = field.value() instanceof WordNode node ? node.word() : "";
        if (word.equals("true") || word.equals("false")) {
            return word.equals("true");
        }
        expect.refuse(field.value(), "true or false");
        return null;
    }

    private Optional<Scale> scale(Node node) {
        var form = "the least and the most, such as [1, 9]";
        var list = expect.list(node, form).filter(found -> {
            boolean two = found.items().size() == 2;
            if (!two) {
                names.problems().add(node.origin(), "A scale has two ends", "Expected " + form + ".");
            }
            return two;
        });
        var ends = list.stream()
                .flatMap(found -> found.items().stream())
                .flatMap(item -> expect.number(item, form).map(NumberNode::value).stream())
                .toList();
        if (ends.size() == 2 && ends.get(0).compareTo(ends.get(1)) >= 0) {
            names.problems().add(node.origin(), "The scale ends before it begins", "Expected " + form + ".");
        }
        return ends.size() == 2 ? Optional.of(new Scale(ends.get(0), ends.get(1))) : Optional.empty();
    }
}
