package panade.render;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.text.WordUtils;
import panade.report.Block;
import panade.report.ReportDocument;

/** Lays a report out as plain text that fits {@value #WIDTH} columns. */
public final class TextRenderer {
    private static final int WIDTH = 100;
    private static final String GAP = "  ";

    private final StringBuilder text = new StringBuilder();

    private TextRenderer() {}

    /** The report as text, ending with a line break. */
    public static String render(ReportDocument report) {
        var renderer = new TextRenderer();
        renderer.line(report.title());
        report.blocks().forEach(renderer::block);
        return renderer.text.toString();
    }

    private void block(Block block) {
        line("");
        if (block instanceof Block.Heading heading) {
            line(heading.text());
            line("-".repeat(Math.min(WIDTH, heading.text().length())));
        } else if (block instanceof Block.Paragraph paragraph) {
            wrapped(paragraph.text(), "", "");
        } else if (block instanceof Block.Points points) {
            points.lines().forEach(point -> wrapped(point, "- ", "  "));
        } else if (block instanceof Block.Drawing drawing) {
            drawing.lines().forEach(this::line);
        } else if (block instanceof Block.Table table) {
            table(table);
        }
    }

    private void wrapped(String words, String first, String indent) {
        var lines = WordUtils.wrap(words, WIDTH - first.length(), "\n", false).split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            line((i == 0 ? first : indent) + lines[i]);
        }
    }

    private void table(Block.Table table) {
        var widths = widths(table);
        line(cells(table, table.columns().stream().map(Block.Column::heading).toList(), widths));
        for (var row : table.rows()) {
            line(cells(table, row, widths));
        }
    }

    private static List<Integer> widths(Block.Table table) {
        var widths = new ArrayList<Integer>();
        for (int i = 0; i < table.columns().size(); i++) {
            int column = i;
            int widest = table.rows().stream()
                    .mapToInt(row -> row.get(column).length())
                    .max()
                    .orElse(0);
            widths.add(Math.max(widest, table.columns().get(i).heading().length()));
        }
        return shrunk(widths);
    }

    /** Takes what is too much from the widest column; its cells are cut with an ellipsis. */
    private static List<Integer> shrunk(List<Integer> widths) {
        int total = widths.stream().mapToInt(Integer::intValue).sum() + GAP.length() * (widths.size() - 1);
        if (total > WIDTH) {
            int widest = widths.indexOf(widths.stream().max(Integer::compare).orElseThrow());
            widths.set(widest, Math.max(8, widths.get(widest) - (total - WIDTH)));
        }
        return widths;
    }

    private static String cells(Block.Table table, List<String> cells, List<Integer> widths) {
        var line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            var cell = cut(cells.get(i), widths.get(i));
            var padding = " ".repeat(widths.get(i) - cell.length());
            line.append(i == 0 ? "" : GAP);
            line.append(table.columns().get(i).number() ? padding + cell : cell + padding);
        }
        return line.toString();
    }

    private static String cut(String cell, int width) {
        return cell.length() <= width ? cell : cell.substring(0, width - 1) + "\u2026";
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }
}
