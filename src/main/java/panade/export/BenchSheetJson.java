package panade.export;

import java.util.List;
import panade.bench.PlannedBench;
import panade.bench.PlannedSheet;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes the bench sheets of a purchase plan. */
public final class BenchSheetJson {
    private BenchSheetJson() {}

    /** An object for each sheet. */
    public static List<?> of(PlannedBench bench) {
        return bench.sheets().stream().map(BenchSheetJson::sheet).toList();
    }

    private static ObjectNode sheet(PlannedSheet planned) {
        var node = JsonNodeFactory.instance
                .objectNode()
                .put("period", planned.period())
                .put("product", planned.sheet().brief().title())
                .put("batch", planned.sheet().brief().batch().text());
        JsonExport.put(node, "batches", planned.batches());
        node.setAll(BatchExport.node(planned.sheet()));
        return node;
    }
}
