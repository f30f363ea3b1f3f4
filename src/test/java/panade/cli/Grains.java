package panade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A kitchen of three grains: oats without protein at 1 a kilogram, soybeans with 40 % at 5, beans with 30 % at 3. The
 * cheapest with a fifth of protein is one part of oats to two of beans, 7/3 a kilogram. Invented.
 */
final class Grains {
    private final Path folder;

    Grains(Path folder) throws IOException {
        this.folder = folder;
        write("set.json", """
                {"ingredients": [
                  {"id": "oats", "label": "rolled oats", "values": {"PROCNT": 0, "FAT": 7}, "others": 0, "allergens": []},
                  {"id": "soybeans", "values": {"PROCNT": 40, "FAT": 20}, "others": 0, "allergens": ["soy"]},
                  {"id": "beans", "values": {"PROCNT": 30, "FAT": 1}, "others": 0, "allergens": []}]}
                """);
        write("prices.csv", "ingredient,supplier,price,per\noats,s,1,kg\nsoybeans,s,5,kg\nbeans,s,3,kg\n");
        brief("\"min\": \"20 %\"", "");
    }

    Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    /** The brief with other limits of the protein, and other fields beside. */
    void brief(String limits, String more) throws IOException {
        write("brief.json", """
                {"title": "loaf", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD", "batch": "1 kg",
                 %s "bounds": [{"name": "protein", "property": "PROCNT", %s}]}
                """.formatted(more, limits));
    }

    /** The formula, with so many grams of each. */
    void made(String oats, String soybeans, String beans) throws IOException {
        write("made.json", """
                {"title": "as made", "brief": "brief.json",
                 "made": {"mix": {"oats": "%s g", "soybeans": "%s g", "beans": "%s g"}}}
                """.formatted(oats, soybeans, beans));
    }

    /** A command, in which what ends like a file is one of the kitchen's. */
    CommandRun run(String... words) {
        return CommandRun.of(Stream.of(words)
                .map(word -> word.endsWith(".json") || word.endsWith(".csv")
                        ? folder.resolve(word).toString()
                        : word)
                .toArray(String[]::new));
    }

    /** What it prints, with single spaces, in lines that fit. */
    static String words(CommandRun run) {
        assertThat(run.output().lines()).allMatch(line -> line.length() <= 100);
        return run.output().replaceAll("\\s+", " ");
    }

    static JsonNode json(CommandRun run) {
        assertThat(run.messages()).isEmpty();
        return JsonMapper.shared().readTree(run.output());
    }
}
