package panade.report;

import java.util.List;

/** A piece of a report. */
public sealed interface Block {
    /** A line that names what follows. */
    record Heading(String text) implements Block {}

    /** Running text. */
    record Paragraph(String text) implements Block {}

    /**
     * A table.
     *
     * @param columns headings with their alignment
     * @param rows cells as text, as many as there are columns
     */
    record Table(List<Column> columns, List<List<String>> rows) implements Block {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /** A table's column. */
    record Column(String heading, boolean number) {}

    /** Lines that must stay as they are, such as a chart. */
    record Drawing(List<String> lines) implements Block {
        public Drawing {
            lines = List.copyOf(lines);
        }
    }

    /** Short lines under each other, each a point of its own. */
    record Points(List<String> lines) implements Block {
        public Points {
            lines = List.copyOf(lines);
        }
    }
}
