package panade.remark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * An invented kitchen in a folder of its own: a set, prices, suppliers and a brief, each replaced where a test needs
 * another.
 */
final class RemarkedKitchen {
    static final String PEA = """
            {"id": "pea", "kinds": ["protein"], "values": {"WATER": 8, "PROCNT": 80, "FAT": 5, "NA": 500}, "others": 0,
             "allergens": []}""";
    static final String OIL = """
            {"id": "oil", "values": {"FAT": 100}, "others": 0, "allergens": []}""";
    static final String WATER = """
            {"id": "water", "values": {"WATER": 100}, "others": 0, "allergens": []}""";

    private final Path folder;

    /** Status, standard output and standard error of one call. */
    record Run(int status, String output, String messages) {
        JsonNode json() {
            return JsonMapper.shared().readTree(output);
        }

        /** The remarks of a result for machines: path and text. */
        List<String> remarks() {
            var remarks = new ArrayList<String>();
            json().get("remarks")
                    .forEach(remark -> remarks.add(remark.get("path").stringValue() + ": "
                            + remark.get("text").stringValue()));
            return remarks;
        }
    }

    RemarkedKitchen(Path folder) {
        this.folder = folder;
        set("", PEA, OIL, WATER);
        prices("pea,Mill,4,kg", "oil,Mill,2,kg", "water,tap,0,kg");
    }

    /** Writes a file of the kitchen. */
    Path file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The ingredient set: traits as JSON, empty for none, and ingredients. */
    RemarkedKitchen set(String traits, String... ingredients) {
        file(
                "ingredients.json",
                "{\"traits\": {" + traits + "}, \"ingredients\": [" + String.join(",\n", ingredients) + "]}");
        return this;
    }

    /** The price list: rows of ingredient, supplier, price and per. */
    RemarkedKitchen prices(String... rows) {
        file("prices.csv", "ingredient,supplier,price,per\n" + String.join("\n", rows) + "\n");
        return this;
    }

    /** The brief, 10 kg of it, with more fields. */
    String brief(String fields) {
        return file("brief.json", """
                {"title": "test", "ingredients": "ingredients.json", "prices": ["prices.csv"], "batch": "10 kg", %s}
                """.formatted(fields)).toString();
    }

    static Run run(String... arguments) {
        var run = CommandRun.of(arguments);
        return new Run(run.status(), run.output(), run.messages());
    }

    /** Paths and texts of the remarks that {@code check} has on a brief with these fields. */
    List<String> remarksOn(String fields) {
        return run("check", brief(fields), "--json").remarks();
    }
}
