package panade.crosscheck;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import panade.testing.CommandRun;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Small briefs drawn so tight that most have no blend: floors, ceilings, fixed numbers, ratios, rules, and a cost per
 * cooked weight now and then. They are solved only as documents, through the command line.
 */
final class DrawnConflict {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final Random random;
    private final int ingredients;

    private DrawnConflict(long seed) {
        this.random = new Random(seed);
        this.ingredients = 3 + random.nextInt(3);
    }

    /** What one call of the command line said. */
    record Run(int status, String output, String messages) {
        JsonNode json() {
            return MAPPER.readTree(output);
        }
    }

    /** Writes the pantry and the prices of a seed into a folder and gives its brief. */
    static ObjectNode draw(long seed, Path folder) throws IOException {
        var drawn = new DrawnConflict(seed);
        Files.writeString(folder.resolve("ingredients.json"), drawn.pantry().toString());
        Files.writeString(folder.resolve("prices.csv"), drawn.prices());
        return drawn.brief();
    }

    /** Asks for the blend of a brief beside its pantry. */
    static Run blend(ObjectNode brief, Path folder, String... options) throws IOException {
        return run("blend", brief, folder, options);
    }

    /** Asks a command about a brief beside its pantry. */
    static Run run(String command, ObjectNode brief, Path folder, String... options) throws IOException {
        var file = Files.writeString(folder.resolve("brief.json"), brief.toString());
        var arguments = new String[options.length + 2];
        arguments[0] = command;
        arguments[1] = file.toString();
        System.arraycopy(options, 0, arguments, 2, options.length);
        var run = CommandRun.of(arguments);
        return new Run(run.status(), run.output(), run.messages());
    }

    private ObjectNode pantry() {
        var list = NODES.arrayNode();
        for (int i = 0; i < ingredients; i++) {
            var values = NODES.objectNode()
                    .put("WATER", random.nextInt(40))
                    .put("PROCNT", 1 + random.nextInt(30))
                    .put("FAT", 1 + random.nextInt(30));
            var ingredient = NODES.objectNode().put("id", "i" + i).put("others", 0);
            ingredient.set("values", values);
            list.add(ingredient);
        }
        var pantry = NODES.objectNode();
        pantry.set("ingredients", list);
        return pantry;
    }

    private String prices() {
        var rows = new StringBuilder("ingredient,supplier,price,per\n");
        for (int i = 0; i < ingredients; i++) {
            rows.append("i")
                    .append(i)
                    .append(",s,")
                    .append(1 + random.nextInt(9))
                    .append(",kg\n");
        }
        return rows.toString();
    }

    private ObjectNode brief() {
        var brief = NODES.objectNode()
                .put("ingredients", "ingredients.json")
                .put("currency", "USD")
                .put("batch", "7 kg");
        brief.set("prices", NODES.arrayNode().add("prices.csv"));
        var bounds = NODES.arrayNode();
        int count = 2 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            bounds.add(bound(i));
        }
        brief.set("bounds", bounds);
        if (random.nextInt(3) > 0) {
            brief.set("rules", rules());
        }
        if (random.nextInt(3) == 0) {
            brief.put("costBasis", "cooked");
            var lose = NODES.objectNode().put("WATER", "30 %").put("FAT", "10 %");
            brief.set("cooking", NODES.objectNode().set("lose", lose));
        }
        return brief;
    }

    private ObjectNode bound(int i) {
        var bound = NODES.objectNode().put("name", "b" + i);
        return switch (random.nextInt(4)) {
            case 0 -> limited(bound.put("property", "PROCNT"), 10 + random.nextInt(25), " %");
            case 1 -> limited(bound.put("property", "FAT"), 5 + random.nextInt(25), " %");
            case 2 -> limited(bound.put("ingredient", "i" + random.nextInt(ingredients)), 1 + random.nextInt(6), " kg");
            default -> {
                bound.put("property", "PROCNT").set("per", NODES.objectNode().put("property", "FAT"));
                yield limited(bound, 5 * (1 + random.nextInt(60)), " %");
            }
        };
    }

    private ObjectNode limited(ObjectNode bound, int number, String unit) {
        int kind = random.nextInt(3);
        if (kind != 1) {
            bound.put("min", number + unit);
        }
        return kind == 0 ? bound : bound.put("max", number + unit);
    }

    private ArrayNode rules() {
        var rules = NODES.arrayNode();
        int count = 1 + random.nextInt(2);
        for (int i = 0; i < count; i++) {
            var two = NODES.arrayNode().add("i0").add("i" + (1 + random.nextInt(ingredients - 1)));
            rules.add(
                    switch (random.nextInt(3)) {
                        case 0 -> NODES.objectNode().set("neverTogether", two);
                        case 1 -> NODES.objectNode().put("if", "i1").put("then", "i2");
                        default ->
                            NODES.objectNode()
                                    .put("max", 1)
                                    .set("choose", NODES.objectNode().set("ingredient", two));
                    });
        }
        return rules;
    }
}
