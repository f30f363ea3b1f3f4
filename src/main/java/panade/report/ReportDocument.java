package panade.report;

import java.util.List;

/** A report as a tree of blocks, before anybody lays it out. */
public record ReportDocument(String title, List<Block> blocks) {
    public ReportDocument {
        blocks = List.copyOf(blocks);
    }
}
