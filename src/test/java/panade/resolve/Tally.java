package panade.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How many printed figures of each sort were solved again, and which of them were wrong. */
final class Tally {
    private static final int SHOWN = 5;

    private final Map<String, int[]> counts = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();
    private String where = "";

    /** Says which kitchen and command the next figures come from. */
    void at(String place) {
        where = place;
    }

    /** Counts a figure of that sort. */
    void claim(String sort, boolean holds, String figure) {
        var count = counts.computeIfAbsent(sort, each -> new int[2]);
        count[0]++;
        if (!holds) {
            count[1]++;
            if (count[1] <= SHOWN) {
                wrong.add(where + ": " + sort + ": " + figure);
            }
        }
    }

    /** Counts something that was met and is no figure, such as an answer left open. */
    void met(String sort) {
        claim("(" + sort + ")", true, "");
    }

    void add(Tally other) {
        other.counts.forEach((sort, count) -> {
            var mine = counts.computeIfAbsent(sort, each -> new int[2]);
            mine[0] += count[0];
            mine[1] += count[1];
        });
        wrong.addAll(other.wrong);
    }

    int checked() {
        return counts.entrySet().stream()
                .filter(each -> !each.getKey().startsWith("("))
                .mapToInt(each -> each.getValue()[0])
                .sum();
    }

    /** The first wrong figures of each sort with their kitchens. */
    List<String> wrong() {
        return List.copyOf(wrong);
    }

    @Override
    public String toString() {
        return counts.entrySet().stream()
                .map(each -> String.format(
                        Locale.ROOT,
                        "%9d solved again %6d wrong  %s",
                        each.getValue()[0],
                        each.getValue()[1],
                        each.getKey()))
                .collect(Collectors.joining("\n"));
    }
}
