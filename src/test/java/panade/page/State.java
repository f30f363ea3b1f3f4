package panade.page;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import panade.cli.Main;
import panade.testing.TemporaryFolders;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Every state that a page can be in, each written once with the result for machines beside it. */
enum State {
    OPTIMAL("constraints/dumpling-filling.json"),
    TARGET("constraints/dumpling-filling.json --target 1.10/lb --no-curves"),
    RULES("constraints/taco-crumble-tidy.json"),
    COOKED("src/test/resources/page/cooked.json"),
    INFEASIBLE("constraints/taco-wish-list.json"),
    LISTS("constraints/skewer-mince.json" + Lists.TWO_MONTHS),
    LISTS_WITHOUT_BLEND("constraints/taco-wish-list.json" + Lists.TWO_MONTHS),
    HOSTILE("src/test/resources/hostile/brief.json");

    private static final Map<State, Written> WRITTEN = new ConcurrentHashMap<>();

    private final String words;

    State(String words) {
        this.words = words;
    }

    /** Price lists to choose from. */
    static final class Lists {
        static final String TWO_MONTHS = " --prices ingredient-sets/netherpleat/prices-september.csv"
                + " --prices ingredient-sets/netherpleat/prices-december.csv";

        private Lists() {}
    }

    /** A page and what {@code --json} says of the same run. */
    record Written(Path page, JsonNode json) {}

    Written written() {
        return WRITTEN.computeIfAbsent(this, State::write);
    }

    private Written write() {
        var page = TemporaryFolders.create("panade-page").resolve("page.html");
        return new Written(page, json("report " + words + " --json -o " + page));
    }

    /** What a command prints for machines. */
    static JsonNode json(String command) {
        var output = new StringWriter();
        Main.run(new PrintWriter(output), new PrintWriter(new StringWriter()), command.split(" "));
        return JsonMapper.shared().readTree(output.toString());
    }
}
