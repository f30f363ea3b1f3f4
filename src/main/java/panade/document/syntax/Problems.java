package panade.document.syntax;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;
import panade.domain.origin.Origin;
import panade.domain.origin.Remark;
import panade.quantity.Spelling;

/** Collects what is wrong, and what may not be meant, while documents are read, so that all of it is told at once. */
public final class Problems {
    /** Names longer than this are not looked for among others: that would take long, and is no slip of a finger. */
    private static final int LONGEST_NAME = 80;

    /** How many names are looked for at most: whoever misspells more has another problem. */
    private static final int MOST_LOOKED_FOR = 200;

    private final List<Problem> found = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final Map<String, Integer> fileOrder = new LinkedHashMap<>();

    /** Fixes the place of a file in the order of the messages. */
    public void opened(String file) {
        fileOrder.putIfAbsent(file, fileOrder.size());
    }

    /** Notes a problem. */
    public void add(Origin origin, String what, String... advice) {
        opened(origin.file());
        found.add(new Problem(origin, what, List.of(advice)));
    }

    /** Notes a problem with something that should be a number, with how to write it where that can be guessed. */
    public void addSpelt(Origin origin, String what, String expected, String written) {
        var advice = new ArrayList<>(List.of(expected));
        Spelling.advice(written).ifPresent(advice::add);
        opened(origin.file());
        found.add(new Problem(origin, what, advice));
    }

    /** Notes an unknown name, with the nearest valid one where it looks like a slip. */
    public void unknown(Origin origin, String what, String name, Collection<String> valid, String expected) {
        opened(origin.file());
        found.add(
                found.size() < MOST_LOOKED_FOR
                        ? Problem.unknown(origin, what, name, valid, expected)
                        : new Problem(origin, what, List.of(expected)));
    }

    /** Notes what is no fault but may not be meant: whole sentences. */
    public void remark(Origin origin, String text) {
        opened(origin.file());
        remarks.add(new Remark(origin, text));
    }

    public boolean none() {
        return found.isEmpty();
    }

    public int count() {
        return found.size();
    }

    /** All problems, file by file in the order of opening, then by line and column. */
    public List<Problem> inOrder() {
        return found.stream()
                .distinct()
                .sorted(Comparator.comparing(Problem::origin, asWritten()))
                .toList();
    }

    /** All remarks in the same order. */
    public List<Remark> remarks() {
        return remarks.stream()
                .distinct()
                .sorted(Comparator.comparing(Remark::origin, asWritten()))
                .toList();
    }

    private Comparator<Origin> asWritten() {
        return Comparator.comparing((Origin origin) -> fileOrder.getOrDefault(origin.file(), Integer.MAX_VALUE))
                .thenComparing(Origin::sheet)
                .thenComparing(Origin::line)
                .thenComparing(Origin::column);
    }

    /** The valid name closest to a slip: the same but for case or swapped letters, or at most a third away. */
    public static Optional<String> nearest(String name, Collection<String> valid) {
        if (name.length() > LONGEST_NAME) {
            return Optional.empty();
        }
        int most = Math.max(1, name.length() / 3);
        var lower = name.toLowerCase(Locale.ROOT);
        var steps = new LevenshteinDistance(Math.max(2, most));
        String nearest = null;
        int least = most + 1;
        for (var other : valid) {
            boolean near = Math.abs(other.length() - name.length()) <= most;
            int distance = near ? distance(steps, lower, other.toLowerCase(Locale.ROOT)) : most + 1;
            if (distance < least || (distance == least && nearest != null && other.compareTo(nearest) < 0)) {
                nearest = other;
                least = distance;
            }
        }
        return Optional.ofNullable(nearest);
    }

    // Letters in the wrong order are one slip, though it takes two replacements to mend them.
    private static int distance(LevenshteinDistance steps, String one, String other) {
        int distance = steps.apply(one, other);
        boolean swapped = distance == 2 && sorted(one).equals(sorted(other));
        return distance < 0 ? Integer.MAX_VALUE : swapped ? 1 : distance;
    }

    private static String sorted(String text) {
        return text.codePoints()
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
