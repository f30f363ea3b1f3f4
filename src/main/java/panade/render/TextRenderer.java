package panade.render;

import org.apache.commons.text.WordUtils;
import panade.report.Block;
import panade.report.ReportDocument;

/** Lays a report out as plain text that fits {@value #WIDTH} columns. */
public final class TextRenderer {
    static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();

    private TextRenderer() {}

    /** The report as text, ending with a line break. */
    public static String render(ReportDocument report) {
        var renderer = new TextRenderer();
        renderer.wrapped(PlainText.name(report.title()), "", "");
        report.blocks().forEach(renderer::block);
        return renderer.text.toString();
    }

    private void block(Block block) {
        line("");
        if (block instanceof Block.Heading heading) {
            var words = PlainText.name(heading.text());
            wrapped(words, "", "");
            line("-".repeat(Math.min(WIDTH, words.length())));
        } else if (block instanceof Block.Paragraph paragraph) {
            wrapped(paragraph.text(), "", "");
        } else if (block instanceof Block.Points points) {
            points.lines().forEach(point -> wrapped(point, "- ", "  "));
        } else if (block instanceof Block.Drawing drawing) {
            drawing.lines().forEach(drawn -> line(PlainText.line(drawn)));
        } else if (block instanceof Block.Table table) {
            new TextTable(table, WIDTH).lines().forEach(this::line);
        }
    }

    private void wrapped(String words, String first, String indent) {
        var lines = WordUtils.wrap(PlainText.line(words), WIDTH - first.length(), "\n", true)
                .split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            line((i == 0 ? first : indent) + lines[i]);
        }
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }
}
