package panade.document;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One problem as printed: {@code file:line:column: pointer: text} and the indented lines below it, joined by spaces.
 * The file is relative to the folder of its case, with slashes.
 */
record PrintedProblem(String file, int line, int column, String text) {
    private static final Pattern HEADING = Pattern.compile("(\\S.*?):(\\d+):(\\d+):(.*)");

    static List<PrintedProblem> parse(List<String> lines, Path folder) {
        var problems = new ArrayList<PrintedProblem>();
        for (String line : lines) {
            var heading = HEADING.matcher(line);
            if (heading.matches()) {
                problems.add(at(heading, folder));
            } else if (line.startsWith(" ") && !problems.isEmpty()) {
                int last = problems.size() - 1;
                problems.set(last, problems.get(last).with(line));
            }
        }
        return problems;
    }

    private static PrintedProblem at(Matcher heading, Path folder) {
        var file = Path.of(heading.group(1)).toAbsolutePath().normalize();
        var relative = folder.relativize(file).toString().replace('\\', '/');
        int line = Integer.parseInt(heading.group(2));
        int column = Integer.parseInt(heading.group(3));
        return new PrintedProblem(relative, line, column, heading.group(4).strip());
    }

    private PrintedProblem with(String moreText) {
        return new PrintedProblem(file, line, column, text + " " + moreText.strip());
    }

    boolean isAt(String pointer) {
        return pointer.isEmpty() ? !text.startsWith("/") : text.startsWith(pointer + ":");
    }

    String textBehind(String pointer) {
        return text.startsWith(pointer + ":") ? text.substring(pointer.length() + 1) : text;
    }
}
