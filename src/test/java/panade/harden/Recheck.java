package panade.harden;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * A blend against the documents, line by line.
 *
 * @param shares of the batch, in the order of the reading's goods
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Recheck(DrawnKitchen kitchen, double[] shares) {
    /** Shares are told to fifteen digits. */
    private static final double CLOSE = 1e-10;

    /** The first line that is broken; null where none is. */
    @Nullable
    String fault() {
        var reading = new Reading(kitchen);
        if (Math.abs(Arrays.stream(shares).sum() - 1) > CLOSE) {
            return "shares sum to " + Arrays.stream(shares).sum();
        }
        for (var row : reading.rows()) {
            double scale = Arrays.stream(row.form()).map(Math::abs).max().orElse(0) + 1e-12;
            double value = 0;
            for (int j = 0; j < shares.length; j++) {
                value += row.form()[j] * shares[j];
            }
            if (value < row.least() - CLOSE * scale || value > row.most() + CLOSE * scale) {
                return row.path() + " has " + value;
            }
        }
        var used = used(reading);
        int most = kitchen.brief().path("maxIngredients").asInt(shares.length);
        return used.size() > most ? used + " are more than " + most : ruleFault(reading, used);
    }

    private Set<String> used(Reading reading) {
        var used = new HashSet<String>();
        for (int j = 0; j < shares.length; j++) {
            if (shares[j] > 0) {
                used.add(reading.goods().get(j).id());
            }
        }
        return used;
    }

    private @Nullable String ruleFault(Reading reading, Set<String> used) {
        for (var rule : kitchen.brief().path("rules")) {
            if (!isKept(rule, reading, used)) {
                return rule.toString();
            }
        }
        return null;
    }

    private boolean isKept(JsonNode rule, Reading reading, Set<String> used) {
        if (rule.has("whenUsed")) {
            var id = rule.path("whenUsed").asString();
            return !used.contains(id) || share(reading, id) >= Reference.percent(rule.path("min")) - CLOSE;
        }
        if (rule.has("choose")) {
            var kind = rule.path("choose").path("kind");
            long count = used.stream().filter(id -> reading.isKind(kind, id)).count();
            return count >= rule.path("min").asInt(0)
                    && count <= rule.path("max").asInt(shares.length);
        }
        if (rule.has("if")) {
            return !used.contains(rule.path("if").asString())
                    || used.contains(rule.path("then").asString());
        }
        return StreamSupport.stream(rule.path("neverTogether").spliterator(), false)
                        .filter(id -> used.contains(id.asString()))
                        .count()
                <= 1;
    }

    private double share(Reading reading, String id) {
        double share = 0;
        for (int j = 0; j < shares.length; j++) {
            share += reading.goods().get(j).id().equals(id) ? shares[j] : 0;
        }
        return share;
    }
}
