package panade.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One problem of an {@code expected.txt}: a line {@code file:line:column pointer}, then lines {@code ~ words} that the
 * printed problem must contain in any case. A {@code *} stands for whatever the reader of the syntax may say there.
 */
record ExpectedProblem(String file, String line, String column, String pointer, List<String> words) {
    private static final Pattern PLACE = Pattern.compile("(\\S+?):(\\d+|\\*):(\\d+|\\*)(?: (.*))?");
    private static final Pattern WORDS = Pattern.compile("\\s+~ (.*)");
    private static final String ANY = "*";

    ExpectedProblem {
        words = List.copyOf(words);
    }

    static List<ExpectedProblem> parse(List<String> lines) {
        var problems = new ArrayList<ExpectedProblem>();
        for (String line : lines) {
            if (!line.isBlank() && !line.startsWith("#")) {
                read(line, problems);
            }
        }
        return problems;
    }

    private static void read(String line, List<ExpectedProblem> problems) {
        var place = PLACE.matcher(line);
        var words = WORDS.matcher(line);
        if (words.matches() && !problems.isEmpty()) {
            int last = problems.size() - 1;
            problems.set(last, problems.get(last).with(words.group(1)));
        } else if (place.matches()) {
            problems.add(at(place));
        } else {
            throw new IllegalArgumentException("neither a place nor words: " + line);
        }
    }

    private static ExpectedProblem at(Matcher place) {
        var pointer = place.group(4) == null ? "" : place.group(4);
        return new ExpectedProblem(place.group(1), place.group(2), place.group(3), pointer, List.of());
    }

    private ExpectedProblem with(String moreWords) {
        var all = new ArrayList<>(words);
        all.add(moreWords);
        return new ExpectedProblem(file, line, column, pointer, all);
    }

    boolean isMetBy(PrintedProblem printed) {
        return printed.file().equals(file)
                && fits(line, printed.line())
                && fits(column, printed.column())
                && (pointer.equals(ANY) || printed.isAt(pointer))
                && words.stream().allMatch(each -> saysIn(printed, each));
    }

    private static boolean fits(String wanted, int actual) {
        return wanted.equals(ANY) || wanted.equals(Integer.toString(actual));
    }

    // The pointer repeats names of fields, so the words are looked for behind it.
    private boolean saysIn(PrintedProblem printed, String wanted) {
        var text = pointer.equals(ANY) ? printed.text() : printed.textBehind(pointer);
        return text.toLowerCase(Locale.ROOT).contains(wanted.toLowerCase(Locale.ROOT));
    }
}
