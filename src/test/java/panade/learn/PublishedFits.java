package panade.learn;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.quantity.Decimal;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published experiments held beside the tests. */
final class PublishedFits {
    private PublishedFits() {}

    static List<JsonNode> checks() {
        try (var in = PublishedFits.class.getResourceAsStream("/learn/mixture-fits.json")) {
            return StreamSupport.stream(
                            JsonMapper.shared().readTree(in).get("checks").spliterator(), false)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static JsonNode check(String id) {
        return checks().stream()
                .filter(check -> check.get("id").asString().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static JsonNode fit(JsonNode check, String form) {
        return StreamSupport.stream(check.get("fits").spliterator(), false)
                .filter(fit -> fit.get("form").asString().equals(form))
                .findFirst()
                .orElseThrow();
    }

    static List<Observation> observations(JsonNode check) {
        var all = new ArrayList<Observation>();
        for (var row : check.get("rows")) {
            var values = new ArrayList<BigFraction>();
            row.forEach(value -> values.add(number(value.asString())));
            int last = values.size() - 1;
            all.add(Observation.of(values.subList(0, last), values.get(last)));
        }
        return all;
    }

    static List<Term> terms(JsonNode fit) {
        var terms = new ArrayList<Term>();
        for (var term : fit.get("terms")) {
            var levers = new ArrayList<Integer>();
            term.forEach(lever -> levers.add(lever.asInt()));
            terms.add(new Term(levers));
        }
        return terms;
    }

    static Fit fitted(JsonNode check, String form) {
        var terms = terms(fit(check, form));
        return (Fit) Fit.of(terms, observations(check), Prior.none(terms.size()));
    }

    static List<BigFraction> point(String... values) {
        return List.of(values).stream().map(PublishedFits::number).toList();
    }

    /** A decimal, or a fraction such as {@code 1/3}. */
    static BigFraction number(String text) {
        return text.contains("/") ? BigFraction.parse(text) : Decimal.of(text);
    }
}
