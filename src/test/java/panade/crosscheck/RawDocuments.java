package panade.crosscheck;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The documents that say a problem. */
record RawDocuments(String brief, String set, String prices) {

    static RawDocuments of(RawProblem problem) {
        return new RawDocuments(brief(problem), set(problem), prices(problem));
    }

    /** Writes them side by side and names the brief. */
    Path writeInto(Path folder) throws IOException {
        Files.writeString(folder.resolve("ingredients.json"), set);
        Files.writeString(folder.resolve("prices.csv"), prices);
        return Files.writeString(folder.resolve("brief.json"), brief);
    }

    private static String brief(RawProblem problem) {
        return """
                {
                "ingredients": "ingredients.json", "prices": ["prices.csv"], "currency": "USD", "batch": "%s kg",
                "bounds": %s,
                "stages": [%s]
                }
                """.formatted(
                        problem.batch().toPlainString(),
                        list(problem.boundsUnder("/bounds/")),
                        problem.hasStage() ? stages(problem) : "");
    }

    private static String stages(RawProblem problem) {
        var share = problem.boundsUnder("/stages/0/share").stream()
                .map(bound -> "\"share\": " + bound.json() + ", ")
                .collect(joining());
        var bounds = list(problem.boundsUnder("/stages/0/bounds/"));
        return """
                {"id": "soak", "kinds": ["texturate"], "ingredients": ["water"], %s"bounds": %s},
                {"id": "mix", "ingredients": ["water"]}""".formatted(share, bounds);
    }

    private static String list(List<RawBound> bounds) {
        return bounds.stream().map(RawBound::json).collect(joining(",\n  ", "[", "]"));
    }

    private static String set(RawProblem problem) {
        return problem.ingredients().stream()
                .map(RawDocuments::ingredient)
                .collect(joining(",\n", "{\"traits\": {\"bite\": {}, \"tone\": {}},\n\"ingredients\": [\n", "\n]}\n"));
    }

    private static String ingredient(RawIngredient ingredient) {
        var kinds = ingredient.kinds().stream().map(kind -> "\"" + kind + "\"").collect(joining(", "));
        var values = ingredient.values().entrySet().stream()
                .map(value -> "\"" + value.getKey() + "\": " + value.getValue().toPlainString())
                .collect(joining(", "));
        return "{\"id\": \"%s\", \"kinds\": [%s], \"values\": {%s}, \"usable\": \"%s %%\", \"maxUse\": \"%s %%\"}"
                .formatted(
                        ingredient.id(),
                        kinds,
                        values,
                        ingredient.usable().toPlainString(),
                        ingredient.maxUse().toPlainString());
    }

    private static String prices(RawProblem problem) {
        return problem.offers().stream()
                .map(RawDocuments::row)
                .collect(joining("\n", "ingredient,supplier,price,per,available\n", "\n"));
    }

    private static String row(RawOffer offer) {
        var available =
                offer.available().map(most -> most.toPlainString() + " kg").orElse("");
        var per = offer.perKg() == 1 ? "kg" : offer.perKg() + " kg";
        return String.join(
                ",", offer.ingredient(), offer.supplier(), offer.price().toPlainString(), per, available);
    }

    @Override
    public String toString() {
        return brief + set + prices;
    }
}
