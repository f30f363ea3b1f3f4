package panade.harden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import panade.testing.CommandRun;
import panade.testing.RepeatableSeeds;
import tools.jackson.databind.json.JsonMapper;

/** Random kitchens, read from their documents by code that shares nothing with the program and solved by ojAlgo. */
@Tag("harden")
class DifferentialTest {
    private static final long KITCHENS = Long.getLong("panade.drawn", 60);
    private static final long FIRST =
            Long.getLong("panade.kitchen", RepeatableSeeds.seed("DifferentialTest") * 1_000_000_007L);

    /** What costs may differ by, of themselves. */
    private static final double CLOSE = 1e-7;

    @TempDir
    Path folder;

    /** Kitchens where the other solver found none, or a dearer one, though the blend told keeps every line. */
    private int missed;

    @Test
    void status_and_cost_are_those_of_another_reading_and_another_solver() throws IOException {
        var wrong = new ArrayList<String>();
        Map<String, Integer> met = new TreeMap<>();
        for (long number = FIRST; number < FIRST + KITCHENS && wrong.size() < 20; number++) {
            var kitchen = DrawnKitchen.of(number);
            Attack.clear(folder);
            var run = CommandRun.of("blend", kitchen.writeInto(folder).toString(), "--json");
            var told = told(run);
            var fault = told == null ? refused(run) : fault(kitchen, run, told);
            met.merge(told == null ? "refused" : told.isPresent() ? "blend" : "no blend", 1, Integer::sum);
            if (fault != null) {
                wrong.add("kitchen " + number + ": " + fault);
                System.out.println(wrong.get(wrong.size() - 1) + "\n" + kitchen);
            }
        }
        System.out.println(KITCHENS + " kitchens " + met + ", " + wrong.size()
                + " differ from ojAlgo's answer, but for " + missed + " where ojAlgo missed the blend");
        assertThat(wrong).isEqualTo(List.of());
    }

    /** The least cost of a kilogram, none where there is no blend; null where the documents were refused. */
    private static @Nullable OptionalDouble told(CommandRun run) {
        if (run.status() == 4) {
            return OptionalDouble.empty();
        }
        return run.status() != 0
                ? null
                : OptionalDouble.of(JsonMapper.shared()
                        .readTree(run.output())
                        .path("cost")
                        .path("perKg")
                        .asDouble());
    }

    /** A drawn bound may have a least above its most, which is a fault of the document. */
    private static @Nullable String refused(CommandRun run) {
        return run.messages().contains("is above the most") ? null : run.messages();
    }

    /**
     * What rounding in another solver cannot explain: its own answer with every row eased, and tightened, by a little.
     */
    private @Nullable String fault(DrawnKitchen kitchen, CommandRun run, OptionalDouble told) {
        var reference = Reference.leastCost(kitchen, 0);
        if (isClose(told, reference)) {
            return null;
        }
        var eased = Reference.leastCost(kitchen, CLOSE);
        var tightened = Reference.leastCost(kitchen, -CLOSE);
        boolean isBetween = told.isEmpty()
                ? tightened.isEmpty()
                : eased.isPresent()
                        && eased.getAsDouble() <= told.getAsDouble() * (1 + CLOSE)
                        && (tightened.isEmpty() || told.getAsDouble() <= tightened.getAsDouble() * (1 + CLOSE));
        return isBetween || (told.isPresent() && isMissed(kitchen, run, told.getAsDouble(), reference))
                ? null
                : "told " + told + ", solved " + reference + ", eased " + eased + ", tightened " + tightened;
    }

    /**
     * Whether the other solver missed a blend that is there: the one told costs less and keeps every line, read anew.
     */
    private boolean isMissed(DrawnKitchen kitchen, CommandRun run, double told, OptionalDouble reference) {
        var blend = JsonMapper.shared().readTree(run.output()).path("blend");
        var shares = new Reading(kitchen)
                .goods().stream()
                        .mapToDouble(one -> StreamSupport.stream(blend.spliterator(), false)
                                .filter(line ->
                                        line.path("ingredient").asString().equals(one.id())
                                                && line.path("stage").asString().equals(one.stage())
                                                && line.path("supplier")
                                                        .asString()
                                                        .equals(one.offer().supplier()))
                                .mapToDouble(line -> line.path("share").asDouble())
                                .sum())
                        .toArray();
        boolean isLess = reference.isEmpty() || told < reference.getAsDouble();
        boolean isMissed = isLess && new Recheck(kitchen, shares).fault() == null;
        missed += isMissed ? 1 : 0;
        return isMissed;
    }

    private static boolean isClose(OptionalDouble one, OptionalDouble other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() && other.isEmpty();
        }
        double most = CLOSE * Math.max(1e-3, Math.abs(other.getAsDouble()));
        return Math.abs(one.getAsDouble() - other.getAsDouble()) <= most;
    }

    @Test
    void contradictions_of_a_millionth_to_a_hundred_trillionth_are_named() throws IOException {
        int named = 0;
        for (int places = 6; places <= 14; places++) {
            var hair = "0." + "0".repeat(places - 1) + "1";
            for (var pair : List.of(
                    List.of(
                            "{\"property\": \"FAT\", \"min\": \"20 %\"}",
                            "{\"property\": \"FAT\", \"max\": \"19." + "9".repeat(places) + " %\"}"),
                    List.of(
                            "{\"kind\": \"dry\", \"min\": \"40 %\"}",
                            "{\"ingredient\": [\"pea\", \"soy\"], \"max\": \"39." + "9".repeat(places) + " %\"}"),
                    List.of(
                            "{\"ingredient\": \"oil\", \"min\": \"2." + hair.substring(2) + " kg\"}",
                            "{\"ingredient\": \"oil\", \"max\": \"20 %\"}"),
                    List.of(
                            "{\"ingredient\": \"oil\", \"per\": {\"ingredient\": \"pea\"}, \"min\": 1."
                                    + hair.substring(2) + "}",
                            "{\"ingredient\": \"pea\", \"per\": {\"ingredient\": \"oil\"}, \"min\": 1}",
                            "{\"ingredient\": \"oil\", \"min\": \"1 %\"}"))) {
                write(pair);
                var run = CommandRun.of("blend", folder.resolve("brief.json").toString(), "--json");
                assertThat(run.status()).as(pair + run.messages()).isEqualTo(4);
                var conflict = JsonMapper.shared()
                        .readTree(run.output())
                        .path("conflicts")
                        .path(0);
                assertThat(conflict.toString()).contains("/bounds/0").contains("/bounds/1");
                assertThat(conflict.size()).as(conflict.toString()).isEqualTo(pair.size());
                named++;
            }
        }
        System.out.println(named + " contradictions of 1e-6 to 1e-14, all named");
    }

    private void write(List<String> bounds) throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [{"id": "pea", "kinds": ["dry"], "values": {"FAT": 5}},
                 {"id": "soy", "kinds": ["dry"], "values": {"FAT": 1}}, {"id": "oil", "values": {"FAT": 100}},
                 {"id": "water", "values": {"FAT": 0}}]}""");
        Files.writeString(
                folder.resolve("prices.csv"),
                "ingredient,supplier,price,per\npea,a,4,kg\nsoy,a,3,kg\noil,a,2,kg\nwater,a,0,kg\n");
        Files.writeString(folder.resolve("brief.json"), """
                {"ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "10 kg", "bounds": [%s]}""".formatted(String.join(",", bounds)));
    }
}
