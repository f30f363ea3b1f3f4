package panade.export;

import java.util.Locale;
import panade.intake.Intake;
import panade.intake.table.Change;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Writes what taking a file in did, or would do. */
public final class ImportExport {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private ImportExport() {}

    /** The result of {@code import}; {@code done} tells whether it was written. */
    public static String of(Intake intake, boolean done) {
        var result = NODES.objectNode();
        result.put("written", done);
        result.put("refused", intake.isRefused());
        var files = result.putArray("files");
        intake.files().forEach(document -> {
            var node = NODES.objectNode();
            node.put("file", document.file().toString());
            node.put("new", !document.exists());
            var changes = node.putArray("changes");
            document.changes().forEach(change -> changes.add(node(change)));
            files.add(node);
        });
        intake.untaken().forEach(result.putArray("notTaken")::add);
        intake.notes().forEach(result.putArray("notes")::add);
        intake.unsaid().forEach(result.putArray("allergensNotKnown")::add);
        return JsonExport.print(result);
    }

    private static JsonNode node(Change change) {
        return NODES.objectNode()
                .put("what", change.sort().name().toLowerCase(Locale.ROOT))
                .put("of", change.of())
                .put("field", change.field())
                .put("was", change.before())
                .put("is", change.after());
    }
}
