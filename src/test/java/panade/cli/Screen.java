package panade.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What a terminal shows after it was sent a text: the movements of ECMA-48 that a progress line may use. */
final class Screen {
    private static final Pattern STEP = Pattern.compile("\u001B\\[(\\d*)([A-Z])|\\X", Pattern.DOTALL);

    private final List<StringBuilder> rows = new ArrayList<>(List.of(new StringBuilder()));
    private int row;
    private int column;

    /** The lines that are left on the screen, without blank ends. */
    static List<String> after(String sent) {
        var screen = new Screen();
        var steps = STEP.matcher(sent);
        while (steps.find()) {
            var move = steps.group(2);
            if (move == null) {
                screen.put(steps.group());
            } else {
                screen.move(move, steps.group(1).isEmpty() ? 1 : Integer.parseInt(steps.group(1)));
            }
        }
        return screen.rows.stream().map(each -> each.toString().stripTrailing()).toList();
    }

    private void put(String text) {
        switch (text) {
            case "\r" -> column = 0;
            case "\n" -> down(1);
            case "\r\n" -> {
                column = 0;
                down(1);
            }
            default -> write(text);
        }
    }

    private void write(String text) {
        var line = rows.get(row);
        line.append(" ".repeat(Math.max(0, column + text.length() - line.length())));
        line.replace(column, column + text.length(), text);
        column += text.length();
    }

    private void move(String command, int count) {
        switch (command) {
            case "A" -> row = Math.max(0, row - count);
            case "B" -> down(count);
            case "K" ->
                rows.get(row)
                        .setLength(
                                count == 2 ? 0 : Math.min(column, rows.get(row).length()));
            default -> throw new IllegalArgumentException("unknown movement " + command);
        }
    }

    private void down(int count) {
        row += count;
        while (rows.size() <= row) {
            rows.add(new StringBuilder());
        }
    }
}
