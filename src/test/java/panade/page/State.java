package panade.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import panade.testing.CommandRun;
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
    JUMP("src/test/resources/page/jump/brief.json --bound chew --bound not_tough"),
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

    /** What a command prints for machines; an underscore stands for a blank inside a word. */
    static JsonNode json(String command) {
        return json(Stream.of(command.split(" "))
                .map(word -> word.replace('_', ' '))
                .toList());
    }

    /** What a command of these words prints for machines. */
    static JsonNode json(List<String> words) {
        return JsonMapper.shared()
                .readTree(CommandRun.of(words.toArray(String[]::new)).output());
    }

    /** The name that the demo's ingredient set gives an id, as it is written there. */
    static String ingredientNamed(String id) {
        try {
            var set = Files.readString(Path.of("ingredient-sets/netherpleat/ingredients.json"));
            var name = Pattern.compile("\"id\": \"" + Pattern.quote(id) + "\",[^{}]*?\"name\": \"([^\"]+)\"")
                    .matcher(set);
            assertThat(name.find()).as("the name of " + id).isTrue();
            return name.group(1);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
