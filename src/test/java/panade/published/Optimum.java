package panade.published;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map.Entry;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** One published optimum: a problem's documents, under one price list, and the figures its source gives. */
record Optimum(Path folder, JsonNode problem, JsonNode figures) {

    static Stream<Optimum> in(String name) {
        Path folder = Documents.folder("published").resolve(name);
        JsonNode problem = Documents.read(folder.resolve("published.json"));
        return problem.path("optima").valueStream().map(figures -> new Optimum(folder, problem, figures));
    }

    Run run() {
        Path brief = folder.resolve("constraints/brief.json");
        if (figures.has("prices")) {
            String prices = folder.resolve(figures.get("prices").asString()).toString();
            return Run.blend(brief, "--prices", prices);
        }
        return Run.blend(brief);
    }

    Stream<PublishedBound> bounds() {
        return figures.path("bounds").valueStream().map(bound -> new PublishedBound(this, bound));
    }

    Stream<Entry<String, JsonNode>> amounts() {
        return figures.path("amounts").path("each").properties().stream();
    }

    /** Lower ends of the published cost intervals, for what the published blend leaves out. */
    Stream<Entry<String, JsonNode>> enteringPrices() {
        return figures.path("costIntervals").path("each").properties().stream()
                .filter(interval -> figures.path("amounts")
                                .path("each")
                                .path(interval.getKey())
                                .asDecimal(BigDecimal.ZERO)
                                .signum()
                        == 0);
    }

    BigDecimal objectivePerCostPerKg() {
        return figures.path("objective").path("perKgTimes").decimalValue();
    }

    /** The same for the rates, where the source gives these for another span of time. */
    BigDecimal ratesPerCostPerKg() {
        return figures.path("objective").path("ratesPerKgTimes").asDecimal(objectivePerCostPerKg());
    }

    @Override
    public String toString() {
        String under = figures.has("of") ? ", " + figures.get("of").asString() : "";
        return problem.get("title").asString() + under + " ("
                + problem.get("source").asString() + ")";
    }
}
