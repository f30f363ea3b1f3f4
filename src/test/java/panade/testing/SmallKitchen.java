package panade.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import panade.document.Documents;
import panade.document.syntax.Overrides;
import panade.document.syntax.Reading;
import panade.domain.Brief;
import panade.explain.Explanation.Limit;
import panade.plan.Outcome;
import panade.plan.Outcome.Blended;
import panade.plan.Planner;
import panade.quantity.Decimal;

/**
 * A kitchen small enough to be worked out by hand, written as documents and read back; all data invented.
 *
 * @param ingredients the set's ingredients as JSON, without the list's brackets
 * @param prices rows of a price list
 * @param bounds the brief's bounds as JSON, without the list's brackets
 * @param more further fields of the brief, each followed by a comma; blank for none
 */
public record SmallKitchen(String ingredients, String prices, String bounds, String more) {
    private static final Planner PLANNER = Planners.LINEAR;

    public SmallKitchen withBounds(String others) {
        return new SmallKitchen(ingredients, prices, others, more);
    }

    public SmallKitchen withPrices(String others) {
        return new SmallKitchen(ingredients, others, bounds, more);
    }

    public Brief brief() {
        try {
            return read(Files.createTempDirectory("panade-kitchen"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Brief read(Path folder) throws IOException {
        var documents = Map.of(
                "ingredients.json",
                "{\"traits\": {\"bite\": {\"absent\": 0}}, \"ingredients\": [" + ingredients + "]}",
                "prices.csv",
                "ingredient,supplier,price,per,available\n" + prices,
                "brief.json",
                "{\"ingredients\": \"ingredients.json\", \"prices\": [\"prices.csv\"], " + more
                        + "\"batch\": \"10 kg\", \"bounds\": [" + bounds + "]}");
        try {
            for (var document : documents.entrySet()) {
                Files.writeString(folder.resolve(document.getKey()), document.getValue());
            }
            var reading = Documents.readBrief(folder.resolve("brief.json"), Overrides.NONE);
            assertThat(reading).isInstanceOf(Reading.Accepted.class);
            return ((Reading.Accepted<Brief>) reading).value();
        } finally {
            for (var name : documents.keySet()) {
                Files.deleteIfExists(folder.resolve(name));
            }
            Files.delete(folder);
        }
    }

    public Blended blended() {
        return blended(brief());
    }

    public static Blended blended(Brief brief) {
        Outcome outcome = PLANNER.answer(brief);
        assertThat(outcome).isInstanceOf(Blended.class);
        return (Blended) outcome;
    }

    public BigFraction cost() {
        return blended().blend().costPerKg();
    }

    public Limit limit(String path) {
        return blended().explanation().limits().stream()
                .filter(limit -> limit.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    public static BigFraction number(String text) {
        return Decimal.of(text);
    }
}
