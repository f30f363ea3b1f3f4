package panade.whatif;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small brief that is based on another. Invented. */
final class BeanKitchen {
    private BeanKitchen() {}

    /** Writes it into a folder, and gives the brief. */
    static Path write(Path folder) throws IOException {
        Files.writeString(folder.resolve("ingredients.json"), """
                {"ingredients": [
                  {"id": "beans", "values": {"PROCNT": 20, "FAT": 1}},
                  {"id": "oil", "values": {"PROCNT": 0, "FAT": 100}},
                  {"id": "water", "values": {"PROCNT": 0, "FAT": 0}}]}
                """);
        Files.writeString(folder.resolve("prices.csv"), """
                ingredient,supplier,price,per,available
                beans,North,2.00,kg,
                beans,South,3.00,kg,
                oil,North,5.00,kg,
                water,tap,0.00,kg,
                """);
        Files.writeString(folder.resolve("base.json"), """
                {"ingredients": "ingredients.json", "prices": ["prices.csv"], "currency": "USD", "batch": "10 kg",
                 "bounds": [{"name": "protein", "property": "PROCNT", "min": "10 %"},
                            {"name": "fat", "property": "FAT", "min": "5 %", "max": "20 %"}]}
                """);
        var file = folder.resolve("brief.json");
        Files.writeString(file, """
                {"basedOn": "base.json", "target": "1.00/kg",
                 "bounds": [{"name": "protein", "property": "PROCNT", "min": "12 %"}],
                 "stages": [{"id": "soak", "ingredients": ["beans"], "share": {"max": "90 %"}}]}
                """);
        return file;
    }
}
