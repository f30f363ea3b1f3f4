package panade.resolve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import tools.jackson.databind.JsonNode;

/** A printed blend as shares of the variables of a reading. */
final class Shares {
    private final PlainReading reading;
    private final List<BigFraction> shares = new ArrayList<>();

    Shares(PlainReading reading, JsonNode blend) {
        this.reading = reading;
        for (var variable : reading.variables()) {
            var share = BigFraction.ZERO;
            for (var line : blend) {
                boolean same = line.get("ingredient").asString().equals(variable.ingredient())
                        && line.get("stage").asString().equals(variable.stage())
                        && line.get("supplier")
                                .asString()
                                .equals(variable.offer().supplier());
                share = same ? share.add(Printed.number(line.get("share"))) : share;
            }
            shares.add(share);
        }
    }

    List<BigFraction> all() {
        return List.copyOf(shares);
    }

    List<String> ids() {
        return reading.variables().stream()
                .map(PlainReading.Variable::ingredient)
                .distinct()
                .toList();
    }

    BigFraction of(String id) {
        return PlainReading.dot(
                reading.form(v -> PlainReading.one(v.ingredient().equals(id))), shares);
    }
}
