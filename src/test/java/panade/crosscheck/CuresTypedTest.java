package panade.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeTry;
import net.jqwik.api.statistics.Statistics;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Cures told of briefs without a blend, typed into the briefs as a cook would and solved through the command line. */
class CuresTypedTest {
    private static final int IMPOSSIBLE = 4;

    private Path folder = Path.of("");

    @BeforeTry
    void makeFolder() throws IOException {
        folder = Files.createTempDirectory("panade-cures");
    }

    @AfterTry
    void clear() throws IOException {
        try (var files = Files.walk(folder)) {
            for (var file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void everyCureTypedInGivesABlendAtTheCostToldAndNothingLessDoes(@ForAll long seed) throws IOException {
        var brief = DrawnConflict.draw(seed, folder);
        var run = DrawnConflict.blend(brief, folder, "--json");
        Statistics.label("status").collect(run.status());
        if (run.status() != IMPOSSIBLE) {
            assertThat(run.status()).as(run.messages()).isZero();
            return;
        }
        var told = run.json();
        assertThat(told.get("undecided")).isEmpty();
        for (var cure : told.get("cures")) {
            assertWorks(changed(brief, List.of(cure)), cure.get("costPerKg"));
            assertNothingLessWorks(brief, cure);
        }
        Statistics.label("cures").collect(told.get("cures").size());
        var combined = told.get("combined");
        if (!combined.isNull()) {
            Statistics.label("together").collect(combined.get("moves").size());
            assertWorks(changed(brief, list(combined.get("moves"))), combined.get("costPerKg"));
            assertNoneCanBeSpared(brief, list(combined.get("moves")));
        }
        assertNoneIsMissed(brief, told);
    }

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void theNumbersOfThePrintedTableGiveABlendWhenTyped(@ForAll long seed) throws IOException {
        var brief = DrawnConflict.draw(seed, folder);
        var run = DrawnConflict.blend(brief, folder);
        int typed = 0;
        for (var line : run.status() == IMPOSSIBLE ? run.output().lines().toList() : List.<String>of()) {
            var cells = line.split(" {2,}", -1);
            if (cells.length == 4 && cells[0].matches("b\\d")) {
                assertWorks(typed(brief, cells), null);
                typed++;
            }
        }
        Statistics.label("typed").collect(typed);
    }

    @Property(tries = 40, edgeCases = EdgeCasesMode.NONE)
    void everyMoveTowardsATargetReachesItWhenTyped(@ForAll long seed) throws IOException {
        var brief = DrawnConflict.draw(seed, folder);
        brief.remove(List.of("costBasis", "cooking"));
        var bounds = (ArrayNode) brief.get("bounds");
        while (bounds.size() > 2) {
            bounds.remove(2);
        }
        var run = DrawnConflict.blend(brief, folder, "--json");
        if (run.status() != 0) {
            return;
        }
        var target = run.json().at("/cost/perKg").decimalValue().multiply(new BigDecimal("0.9"));
        var told = DrawnConflict.run("reach", brief, folder, "--json", "--target", target.toPlainString() + "/kg")
                .json();
        assertThat(told.get("undecided")).isEmpty();
        for (var move : told.get("moves")) {
            boolean reaches = move.get("to").isNumber();
            var changed = reaches ? changed(brief, List.of(move)) : dropped(brief, move);
            assertWorks(changed, move.get("costPerKg"));
            assertThat(move.get("costPerKg").decimalValue().compareTo(target) <= 0)
                    .isEqualTo(reaches);
        }
        Statistics.label("moves").collect(told.get("moves").size());
        var pair = list(told.get("pair"));
        Statistics.label("pair").collect(pair.size());
        for (var move : pair) {
            assertThat(move.get("to").decimalValue())
                    .isNotEqualByComparingTo(move.get("from").decimalValue());
            var alone = DrawnConflict.blend(changed(brief, List.of(move)), folder, "--json");
            assertThat(alone.json().at("/cost/perKg").decimalValue()).isGreaterThan(target);
        }
        if (!pair.isEmpty()) {
            assertWorks(changed(brief, pair), pair.get(0).get("costPerKg"));
            assertThat(pair.get(0).get("costPerKg").decimalValue()).isLessThanOrEqualTo(target);
        }
    }

    private static ObjectNode dropped(ObjectNode brief, JsonNode move) {
        var changed = brief.deepCopy();
        var steps = move.get("path").asString().split("/", -1);
        var bounds = (ArrayNode) changed.get("bounds");
        var bound = (ObjectNode) bounds.get(Integer.parseInt(steps[2]));
        boolean isOneOfTwo = steps.length > 3 && bound.has("min") && bound.has("max");
        if (isOneOfTwo) {
            bound.remove(steps[3]);
        } else {
            bounds.remove(Integer.parseInt(steps[2]));
        }
        return changed;
    }

    private void assertWorks(ObjectNode brief, JsonNode costPerKg) throws IOException {
        var run = DrawnConflict.blend(brief, folder, "--json");
        assertThat(run.status())
                .as("%s%n%s", brief, run.output() + run.messages())
                .isZero();
        if (costPerKg != null) {
            assertThat(run.json().at("/cost/perKg").decimalValue()).isEqualByComparingTo(costPerKg.decimalValue());
        }
    }

    /** A number moved by a ten-thousandth of its move less is not enough; six digits are exact to less than that. */
    private void assertNothingLessWorks(ObjectNode brief, JsonNode cure) throws IOException {
        if (!cure.get("to").isNumber() || cure.get("path").asString().startsWith("/rules")) {
            return;
        }
        var from = cure.get("from").decimalValue();
        var to = cure.get("to").decimalValue();
        var back = from.subtract(to).multiply(new BigDecimal("0.0001"));
        var least = to.abs().multiply(new BigDecimal("0.00001"));
        if (back.abs().compareTo(least) > 0) {
            var almost = ((ObjectNode) cure.deepCopy()).put("to", to.add(back));
            assertThat(DrawnConflict.blend(changed(brief, List.of(almost)), folder)
                            .status())
                    .as("%s%nless than %s", brief, cure)
                    .isEqualTo(IMPOSSIBLE);
        }
    }

    private void assertNoneCanBeSpared(ObjectNode brief, List<JsonNode> moves) throws IOException {
        for (var move : moves) {
            var others = new ArrayList<>(moves);
            others.remove(move);
            assertThat(DrawnConflict.blend(changed(brief, others), folder).status())
                    .as("%s%nwithout %s", brief, move)
                    .isEqualTo(IMPOSSIBLE);
        }
    }

    /** Where a blend exists without a bound, some number of it would do: every amount here is more than nothing. */
    private void assertNoneIsMissed(ObjectNode brief, JsonNode told) throws IOException {
        for (int i = 0; i < brief.get("bounds").size(); i++) {
            var dropped = brief.deepCopy();
            ((ArrayNode) dropped.get("bounds")).remove(i);
            boolean frees = DrawnConflict.blend(dropped, folder).status() == 0;
            var path = "/bounds/" + i;
            boolean isTold = list(told.get("cures")).stream()
                    .anyMatch(cure -> cure.get("path").asString().startsWith(path));
            assertThat(isTold).as("%s%n%s", brief, path).isEqualTo(frees);
        }
    }

    private static List<JsonNode> list(JsonNode array) {
        var list = new ArrayList<JsonNode>();
        array.forEach(list::add);
        return list;
    }

    private static ObjectNode changed(ObjectNode brief, List<JsonNode> changes) {
        var changed = brief.deepCopy();
        var dropped = new ArrayList<Integer>();
        for (var change : changes) {
            var steps = change.get("path").asString().split("/", -1);
            int place = Integer.parseInt(steps[2]);
            var member = (ObjectNode) changed.get(steps[1]).get(place);
            if (change.get("to").isString()) {
                dropped.add(place);
            } else if (steps[1].equals("rules")) {
                member.put("max", change.get("to").intValue());
            } else {
                write(member, steps.length > 3 ? List.of(steps[3]) : List.of("min", "max"), change);
            }
        }
        dropped.stream()
                .sorted(Comparator.reverseOrder())
                .forEach(place -> ((ArrayNode) changed.get("rules")).remove(place));
        return changed;
    }

    private static void write(ObjectNode bound, List<String> sides, JsonNode change) {
        var number = change.get("to").decimalValue().toPlainString() + " "
                + change.get("unit").asString();
        sides.forEach(side -> bound.put(side, number));
    }

    private static ObjectNode typed(ObjectNode brief, String[] cells) {
        var changed = brief.deepCopy();
        var bound = (ObjectNode) changed.get("bounds").get(Integer.parseInt(cells[0].substring(1)));
        var numbers = cells[2].split(" to ", -1);
        if (bound.has("min")) {
            bound.put("min", numbers[0]);
        }
        if (bound.has("max")) {
            bound.put("max", numbers[numbers.length - 1]);
        }
        return changed;
    }
}
