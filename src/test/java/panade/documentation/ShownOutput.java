package panade.documentation;

import static java.util.stream.Collectors.toCollection;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a README shows of a printed output: runs of lines with a line of three dots for what is left out between them.
 * After the output has changed, each run is found again by the words of its first and last lines, since the figures are
 * what changed.
 */
record ShownOutput(List<Run> runs, boolean whole, boolean fromTheTop, boolean toTheEnd) {
    static final String DOTS = "...";

    /** Below this likeness two lines do not tell of the same thing. */
    private static final double ALIKE = 0.6;

    private static final double A_LINE_MORE_OR_LESS = 0.02;
    private static final double ONE_END_GONE = 1;
    private static final double ONE_END_A_LINE = 0.2;

    /** Lines between two elisions, with the blank lines around them. */
    record Run(int blankBefore, List<String> lines, int blankAfter) {
        static Run of(List<String> lines) {
            int from = 0;
            int to = lines.size();
            while (from < to && lines.get(from).isBlank()) {
                from++;
            }
            while (to > from && lines.get(to - 1).isBlank()) {
                to--;
            }
            return new Run(from, List.copyOf(lines.subList(from, to)), lines.size() - to);
        }

        String with(List<String> found) {
            return "\n".repeat(blankBefore) + String.join("\n", found) + "\n" + "\n".repeat(blankAfter);
        }

        String first() {
            return lines.get(0);
        }

        String last() {
            return lines.get(lines.size() - 1);
        }
    }

    static ShownOutput of(String shown) {
        var lines = shown.lines().toList();
        var runs = new ArrayList<Run>();
        var run = new ArrayList<String>();
        for (var line : lines) {
            if (line.equals(DOTS)) {
                keep(run, runs);
                run.clear();
            } else {
                run.add(line);
            }
        }
        keep(run, runs);
        return new ShownOutput(
                List.copyOf(runs),
                !lines.contains(DOTS),
                !lines.get(0).equals(DOTS),
                !lines.get(lines.size() - 1).equals(DOTS));
    }

    private static void keep(List<String> lines, List<Run> runs) {
        var run = Run.of(lines);
        if (!run.lines().isEmpty()) {
            runs.add(run);
        }
    }

    /** The same of what is printed now, or nothing where a run of lines cannot be found again. */
    Optional<String> of(List<String> printed) {
        return whole
                ? Optional.of(String.join("\n", printed) + "\n")
                : spans(printed).map(spans -> joined(printed, spans));
    }

    private String joined(List<String> printed, List<Span> spans) {
        var text = new StringBuilder(fromTheTop ? "" : DOTS + "\n");
        for (int k = 0; k < runs.size(); k++) {
            text.append(k == 0 ? "" : DOTS + "\n");
            text.append(runs.get(k)
                    .with(printed.subList(spans.get(k).from(), spans.get(k).to() + 1)));
        }
        return text.append(toTheEnd ? "" : DOTS + "\n").toString();
    }

    private record Span(int from, int to) {}

    private record Way(double score, List<Span> spans) {
        Way and(double more, Span span) {
            var longer = new ArrayList<>(spans);
            longer.add(span);
            return new Way(score + more, List.copyOf(longer));
        }
    }

    /** The runs in their order, as alike as they can be altogether. */
    private Optional<List<Span>> spans(List<String> printed) {
        var best = new ArrayList<Optional<Way>>();
        for (int end = -1; end < printed.size(); end++) {
            best.add(Optional.of(new Way(0, List.of())));
        }
        for (int k = 0; k < runs.size(); k++) {
            best = withRun(k, printed, best);
        }
        return best.get(printed.size()).map(Way::spans);
    }

    /** For each line, the best way to place the runs so far, this one last, no later than that line. */
    private ArrayList<Optional<Way>> withRun(int k, List<String> printed, List<Optional<Way>> before) {
        var best = new ArrayList<Optional<Way>>();
        best.add(Optional.empty());
        for (int to = 0; to < printed.size(); to++) {
            var way = best.get(to);
            for (int from = 0; from <= to; from++) {
                way = better(way, placed(k, new Span(from, to), printed, before.get(from)));
            }
            best.add(way);
        }
        return best;
    }

    private static Optional<Way> better(Optional<Way> one, Optional<Way> other) {
        return one.isEmpty()
                        || (other.isPresent() && other.get().score() > one.get().score())
                ? other
                : one;
    }

    private Optional<Way> placed(int k, Span span, List<String> printed, Optional<Way> before) {
        if (before.isEmpty()
                || (k == 0 && fromTheTop && span.from() > 0)
                || (k == runs.size() - 1 && toTheEnd && span.to() < printed.size() - 1)) {
            return Optional.empty();
        }
        var run = runs.get(k);
        double first = likeness(run.first(), printed.get(span.from()));
        double last = likeness(run.last(), printed.get(span.to()));
        int longer = Math.abs(span.to() - span.from() + 1 - run.lines().size());
        boolean both = first >= ALIKE && last >= ALIKE;
        if (Math.max(first, last) < ALIKE) {
            return Optional.empty();
        }
        double inside = inside(run.lines(), printed.subList(span.from(), span.to() + 1));
        return before.map(way -> way.and(
                first + last + inside - (both ? longer * A_LINE_MORE_OR_LESS : ONE_END_GONE + longer * ONE_END_A_LINE),
                span));
    }

    /** The second line and the last but one tell apart tables that begin or end alike. */
    private static double inside(List<String> shown, List<String> found) {
        if (shown.size() < 3 || found.size() < 3) {
            return 0;
        }
        return (likeness(shown.get(1), found.get(1))
                        + likeness(shown.get(shown.size() - 2), found.get(found.size() - 2)))
                / 2;
    }

    private static final Pattern NO_LETTERS = Pattern.compile("[^\\p{L}]+");

    /** Dice's measure of the words of two lines; lines without words are alike when only their figures differ. */
    static double likeness(String one, String other) {
        var left = words(one);
        var right = words(other);
        if (left.isEmpty() || right.isEmpty()) {
            return left.isEmpty() && right.isEmpty() && shape(one).equals(shape(other)) ? 1 : 0;
        }
        double all = left.size() + right.size();
        left.removeIf(right::remove);
        // A word is taken off both sides at once, so what is left over on the left tells what was common.
        return 2 * (words(one).size() - left.size()) / all;
    }

    private static List<String> words(String line) {
        return NO_LETTERS
                .splitAsStream(line.toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty())
                .collect(toCollection(ArrayList::new));
    }

    private static String shape(String line) {
        return line.replaceAll("[0-9.,]+", "0")
                .replaceAll("-+", "-")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
