package panade.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A kitchen with a bound of every form that a number can be tried for, in files of its own; all data invented.
 *
 * @param folder where the files are
 */
public record Pottage(Path folder) {
    /** A brief, its basis, a set, two price lists, and a formula. */
    public Pottage write() throws IOException {
        Files.writeString(folder.resolve("set.json"), """
                {"ingredients": [
                  {"id": "rice", "name": "cooked rice", "values": {"PROCNT": 3, "NA": 2}, "others": 0, "allergens": [],
                   "maxUse": "60 %"},
                  {"id": "peas", "values": {"PROCNT": 20, "NA": 10}, "others": 0, "allergens": []},
                  {"id": "lentils", "values": {"PROCNT": 30, "NA": 20}, "others": 0, "allergens": []},
                  {"id": "salt", "values": {"NA": 38758}, "others": 0, "allergens": []},
                  {"id": "water", "values": {}, "others": 0, "allergens": []}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), """
                ingredient,supplier,price,per,available
                rice,Mill,1,kg,
                peas,Mill,2,kg,
                peas,Tarn,2.5,kg,
                lentils,Tarn,3.2,kg,
                salt,Mill,0.5,kg,
                water,tap,0.01,kg,
                """);
        Files.writeString(folder.resolve("later.csv"), """
                ingredient,supplier,price,per,available
                rice,Mill,1.1,kg,
                lentils,Tarn,3,kg,
                salt,Mill,0.5,kg,
                water,tap,0.01,kg,
                """);
        Files.writeString(folder.resolve("brief.json"), """
                {"title": "pottage", "ingredients": "set.json", "prices": ["prices.csv"], "currency": "USD",
                 "batch": "10 kg", "target": "0.60/lb", "weighing": "1 g", "serving": "100 g",
                 "stages": [{"id": "soak", "ingredients": ["peas", "lentils", "water"], "share": {"min": "45 %"},
                             "bounds": [{"name": "soaked", "ingredient": "water", "min": "20 %", "max": "40 %"}]}],
                 "bounds": [{"name": "protein", "property": "PROCNT", "min": "12 %"},
                            {"property": "NA", "min": "200 mg/100g", "max": "400 mg/100g"},
                            {"ingredient": "lentils", "per": {"ingredient": "peas"}, "min": 0.25},
                            {"name": "some rice", "ingredient": "rice", "min": "10 %"}]}
                """);
        Files.writeString(folder.resolve("formula.json"), """
                {"title": "pottage as made", "brief": "brief.json",
                 "made": {"soak": {"peas": "4 kg", "lentils": "1.5 kg", "water": "2 kg"},
                          "mix": {"rice": "2.4 kg", "salt": "80 g"}}}
                """);
        return this;
    }

    /** A file's path as it is typed. */
    public String path(String name) {
        return folder.resolve(name).toString();
    }

    /** Writes a file anew with some words in the place of others, which must be there. */
    public Pottage edited(String name, String words, String others) throws IOException {
        var file = folder.resolve(name);
        var text = Files.readString(file);
        if (!text.contains(words)) {
            throw new IllegalArgumentException(name + " does not say " + words);
        }
        Files.writeString(file, text.replace(words, others));
        return this;
    }

    /** One call of a command, with as many settings as there are. */
    public static CommandRun run(List<String> command, String... settings) {
        var words = new ArrayList<>(command);
        for (var setting : settings) {
            words.addAll(List.of("--set", setting));
        }
        return CommandRun.of(words.toArray(String[]::new));
    }
}
