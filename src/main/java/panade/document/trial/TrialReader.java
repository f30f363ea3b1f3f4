package panade.document.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.selector.Names;
import panade.document.syntax.Amounts;
import panade.document.syntax.Expect;
import panade.document.syntax.Fields;
import panade.document.syntax.Ids;
import panade.document.syntax.Node;
import panade.document.syntax.Node.Field;
import panade.document.syntax.Node.NumberNode;
import panade.document.syntax.Node.ObjectNode;
import panade.document.syntax.Node.TextNode;
import panade.domain.trial.Response;
import panade.domain.trial.Trial;
import panade.domain.trial.Trial.Measurement;
import panade.domain.trial.Weighed;
import panade.quantity.Decimal;
import panade.quantity.Quantity;

/** Reads one trial. */
final class TrialReader {
    private static final String MEASURED = "figures by response, such as {\"cook loss\": [9.1, 8.7, 9.4]}";
    private static final String FIGURE = "a number, a list of them, or numbers by taster, such as {\"AB\": 6}";

    /** How far weights may be from the batch that they are said to make; common practice, no source. */
    private static final BigFraction MOST_OFF = BigFraction.of(5, 1000);

    private final Names names;
    private final Expect expect;
    private final Map<String, Response> responses;

    TrialReader(Names names, List<Response> responses) {
        this.names = names;
        this.expect = new Expect(names.problems());
        this.responses = new LinkedHashMap<>();
        responses.forEach(each -> this.responses.put(each.name(), each));
    }

    /** The trial, still without knowing which other it repeats: its group is what the document says. */
    Optional<Trial> read(ObjectNode object) {
        var fields = new Fields(
                object,
                names.problems(),
                "id",
                "date",
                "batch",
                "repeats",
                "block",
                "weighed",
                "lots",
                "process",
                "measured",
                "note");
        var id = fields.required("id", "the trial's own name, such as \"T7\"")
                .flatMap(node -> expect.text(node, "the trial's own name"));
        id.ifPresent(text -> new Ids(names.problems()).check(text.origin(), text.text(), "trial"));
        var weighed = fields.required("weighed", "what was weighed, such as {\"mix\": {\"salt\": \"4.5 g\"}}")
                .flatMap(new WeighedReader(names)::read);
        fields.get("batch").ifPresent(node -> weighed.ifPresent(found -> checkBatch(node, found)));
        fields.get("lots").ifPresent(node -> weighed.ifPresent(found -> checkLots(node, found)));
        var process = fields.get("process").map(this::process).orElse(Map.of());
        var measured = fields.get("measured").map(this::measured).orElse(Map.of());
        return id.flatMap(name -> weighed.map(found -> new Trial(
                name.text(),
                found,
                process,
                measured,
                text(fields, "repeats"),
                text(fields, "date"),
                text(fields, "block"),
                object.origin())));
    }

    private String text(Fields fields, String name) {
        return fields.get(name)
                .flatMap(node -> expect.text(node, "a name in quotes"))
                .map(TextNode::text)
                .orElse("");
    }

    private void checkBatch(Node node, Weighed weighed) {
        new Amounts(names.problems()).weight(node, "1 lb").ifPresent(batch -> {
            var off = weighed.total().subtract(batch.base()).abs();
            if (off.compareTo(batch.base().multiply(MOST_OFF)) > 0) {
                var sum = Decimal.significant(batch.unit().fromBase(weighed.total()), 6);
                names.problems()
                        .add(
                                node.origin(),
                                "The weights add up to " + sum.toPlainString() + " "
                                        + batch.unit().symbol() + ", and the batch is " + batch.text(),
                                "Expected weights within 0.5 % of the batch; look for one that is missing or misread.");
            }
        });
    }

    private void checkLots(Node node, Weighed weighed) {
        var used = weighed.kilograms().keySet().stream()
                .map(use -> use.ingredient())
                .distinct()
                .toList();
        expect.object(node, "lots by ingredient, such as {\"methylcellulose\": \"G-114\"}")
                .ifPresent(found -> found.fields().forEach(field -> {
                    expect.text(field.value(), "the lot's number in quotes");
                    if (!used.contains(names.id(field.name()))) {
                        var what = "A lot of \"" + field.name() + "\" is named, and none was weighed in";
                        names.problems()
                                .unknown(field.nameOrigin(), what, field.name(), used, "Expected what was weighed in.");
                    }
                }));
    }

    private Map<String, BigFraction> process(Node node) {
        var settings = new LinkedHashMap<String, BigFraction>();
        expect.object(node, "settings by name, such as {\"rest, min\": 30}")
                .ifPresent(found -> found.fields()
                        .forEach(field -> expect.number(field.value(), "a number; its unit stands in the name")
                                .ifPresent(number -> settings.put(field.name(), number.value()))));
        return settings;
    }

    private Map<String, List<Measurement>> measured(Node node) {
        var measured = new LinkedHashMap<String, List<Measurement>>();
        expect.object(node, MEASURED)
                .ifPresent(found -> found.fields().forEach(field -> {
                    var response = responses.get(field.name());
                    if (response == null) {
                        names.problems()
                                .unknown(
                                        field.nameOrigin(),
                                        "No response is called \"" + field.name() + "\"",
                                        field.name(),
                                        responses.keySet(),
                                        "Expected one that stands under \"responses\".");
                    } else {
                        measured.put(field.name(), figures(field.value(), response));
                    }
                }));
        return measured;
    }

    private List<Measurement> figures(Node node, Response response) {
        var all = new ArrayList<Measurement>();
        if (node instanceof ObjectNode tasters) {
            tasters.fields().forEach(field -> addFigure(field, response, all));
        } else if (node instanceof Node.ArrayNode list) {
            list.items().forEach(item -> figure(item, response).ifPresent(each -> all.add(new Measurement(each, ""))));
        } else {
            figure(node, response).ifPresent(each -> all.add(new Measurement(each, "")));
        }
        return all;
    }

    private void addFigure(Field taster, Response response, List<Measurement> all) {
        if (taster.name().isBlank()) {
            names.problems().add(taster.nameOrigin(), "A taster has no name", "Expected initials, such as \"AB\".");
        }
        figure(taster.value(), response).ifPresent(each -> all.add(new Measurement(each, taster.name())));
    }

    private Optional<BigFraction> figure(Node node, Response response) {
        var number = node instanceof NumberNode plain ? Optional.of(plain.value()) : withUnit(node, response);
        if (number.isEmpty()) {
            var unit = response.unit().isEmpty() ? "" : ", with no unit or with " + response.unit();
            return expect.refuse(node, FIGURE + unit);
        }
        return number.filter(value -> isOnScale(node, value, response));
    }

    private static Optional<BigFraction> withUnit(Node node, Response response) {
        return node instanceof TextNode text
                ? Quantity.split(text.text())
                        .filter(written ->
                                written.symbol().isEmpty() || written.symbol().equals(response.unit()))
                        .flatMap(written -> Decimal.parse(written.number()))
                : Optional.empty();
    }

    private boolean isOnScale(Node node, BigFraction value, Response response) {
        var scale = response.unit().equals("%") && response.scale() == null
                ? new Response.Scale(BigFraction.of(-100), BigFraction.of(100))
                : response.scale();
        boolean on = scale == null || scale.holds(value);
        if (scale != null && !on) {
            names.problems()
                    .add(
                            node.origin(),
                            "\"" + Expect.spelling(node) + "\" is not on the scale of \"" + response.name() + "\"",
                            "Expected a figure from " + plain(scale.least()) + " to " + plain(scale.most()) + ".");
        }
        return on;
    }

    private static String plain(BigFraction value) {
        return Decimal.significant(value, 9).toPlainString();
    }
}
