package panade.export;

import java.util.List;
import panade.domain.origin.Remark;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes what documents say that may not be meant. */
final class RemarkExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private RemarkExport() {}

    /** A result with the remarks on what it was made from. */
    static String print(ObjectNode result, List<Remark> remarks) {
        result.set("remarks", array(remarks));
        return JsonExport.print(result);
    }

    private static ArrayNode array(List<Remark> remarks) {
        var array = NODES.arrayNode();
        remarks.forEach(remark -> array.add(NODES.objectNode()
                .put("path", remark.path())
                .put("file", remark.file())
                .put("line", remark.origin().line())
                .put("text", remark.text())));
        return array;
    }
}
