package panade.published;

import java.nio.file.Path;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** A small set of documents whose exact answer was derived by hand. */
record TrickySet(String name, Path folder, JsonNode expected) {

    static TrickySet of(String name) {
        Path folder = Documents.folder("tricky").resolve(name);
        return new TrickySet(name, folder, Documents.read(folder.resolve("expected.json")));
    }

    Run run() {
        return Run.blend(folder.resolve("constraints/brief.json"));
    }

    Stream<Bound> bounds() {
        return expected.path("bounds").valueStream().map(bound -> new Bound(this, bound));
    }

    @Override
    public String toString() {
        return name + ": " + expected.get("why").asString();
    }

    /** What is expected of one bound: fields it does not give are left open. */
    record Bound(TrickySet set, JsonNode expected) {

        /** Found by path where one is settled; ceilings from the ingredient set and the price list only have names. */
        JsonNode printed() {
            String field = expected.has("path") ? "path" : "name";
            return set.run().bound(field, expected.get(field).asString());
        }

        @Override
        public String toString() {
            JsonNode called = expected.has("name") ? expected.get("name") : expected.get("path");
            return set.name() + ": " + called.asString();
        }
    }
}
