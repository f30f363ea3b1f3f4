package panade.growth;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A kitchen of any size with a blend: a blend is drawn first, and every bound is set a few per cent beside what it
 * holds. All of it invented, and the same each time for the same size.
 */
final class BigKitchen {
    private static final List<String> COMPONENTS =
            List.of("WATER", "PROCNT", "FAT", "FASAT", "CHOAVL", "FIBTG", "SUGAR", "ASH");

    private final int size;
    private final int bounds;
    private final Random random;
    private final List<String> properties = new ArrayList<>(COMPONENTS);
    private final double[][] values;
    private final double[] shares;

    private BigKitchen(int size, int bounds) {
        this.size = size;
        this.bounds = bounds;
        this.random = new Random(size * 131L + bounds);
        IntStream.range(0, Math.min(40, bounds / 2)).forEach(i -> properties.add("t" + i));
        this.values = IntStream.range(0, size).mapToObj(i -> draw()).toArray(double[][]::new);
        this.shares = blend();
    }

    /** Writes {@code FOLDER/SIZExBOUNDS/brief.json} and what it names, for each size such as {@code 200x60}. */
    public static void main(String[] words) throws IOException {
        for (int k = 1; k < words.length; k++) {
            var numbers = words[k].split("x", 2);
            var kitchen = new BigKitchen(Integer.parseInt(numbers[0]), Integer.parseInt(numbers[1]));
            kitchen.write(Path.of(words[0], words[k]));
        }
    }

    /** Six components that come to almost all of it, two that are part of others, and traits from nought to ten. */
    private double[] draw() {
        var parts = random.doubles(6).map(part -> part * part).toArray();
        double all = 0;
        for (double part : parts) {
            all += part;
        }
        var drawn = new double[properties.size()];
        double scale = (95 + 4 * random.nextDouble()) / all;
        int[] places = {0, 1, 2, 4, 5, 7};
        for (int k = 0; k < places.length; k++) {
            drawn[places[k]] = hundredths(parts[k] * scale);
        }
        drawn[3] = hundredths(drawn[2] * random.nextDouble());
        drawn[6] = hundredths(drawn[4] * random.nextDouble());
        for (int k = COMPONENTS.size(); k < drawn.length; k++) {
            drawn[k] = hundredths(10 * random.nextDouble());
        }
        return drawn;
    }

    private static double hundredths(double value) {
        return Math.floor(value * 100) / 100;
    }

    /** Some forty ingredients, whatever there are. */
    private double[] blend() {
        var drawn = IntStream.range(0, size)
                .mapToDouble(i -> random.nextDouble() < 40.0 / size ? random.nextDouble() : 0)
                .toArray();
        drawn[0] += 0.1;
        double all = 0;
        for (double share : drawn) {
            all += share;
        }
        for (int i = 0; i < size; i++) {
            drawn[i] /= all;
        }
        return drawn;
    }

    private double held(int property) {
        double held = 0;
        for (int i = 0; i < size; i++) {
            held += shares[i] * values[i][property];
        }
        return held;
    }

    private void write(Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("ingredients.json"), ingredients());
        Files.writeString(folder.resolve("prices.csv"), prices());
        Files.writeString(
                folder.resolve("brief.json"),
                "{\"title\": \"Kitchen of " + size + "\", \"ingredients\": \"ingredients.json\", \"prices\":"
                        + " [\"prices.csv\"], \"batch\": \"100 kg\", \"bounds\": [\n" + briefBounds() + "\n]}\n");
    }

    private String ingredients() {
        var traits = properties.stream()
                .skip(COMPONENTS.size())
                .map(name -> "\"" + name + "\": {\"absent\": 0}")
                .collect(Collectors.joining(", "));
        return "{\"title\": \"big\", \"traits\": {" + traits + "}, \"ingredients\": [\n"
                + IntStream.range(0, size).mapToObj(this::ingredient).collect(Collectors.joining(",\n")) + "\n]}\n";
    }

    private String ingredient(int i) {
        var held = IntStream.range(0, properties.size())
                .mapToObj(k -> "\"" + properties.get(k) + "\": " + decimal(values[i][k]))
                .collect(Collectors.joining(", "));
        return "{\"id\": \"ing-" + i + "\", \"kinds\": [\"kind" + i % kinds() + "\"], \"values\": {" + held
                + "}, \"allergens\": []}";
    }

    private int kinds() {
        return Math.max(3, bounds / 6);
    }

    private String prices() {
        return "ingredient,supplier,price,per\n"
                + IntStream.range(0, size)
                        .mapToObj(i -> "ing-" + i + ",supplier " + i % 21 + "," + decimal(1 + 9 * random.nextDouble())
                                + ",kg\n")
                        .collect(Collectors.joining());
    }

    private String briefBounds() {
        var all = new ArrayList<String>();
        for (int k = 0; k < properties.size(); k++) {
            all.add("\"property\": \"" + properties.get(k) + "\", "
                    + limit(held(k), k < COMPONENTS.size() ? " %" : ""));
        }
        for (int k = 0; k < kinds(); k++) {
            int kind = k;
            double share = IntStream.range(0, size)
                    .filter(i -> i % kinds() == kind)
                    .mapToDouble(i -> shares[i])
                    .sum();
            all.add("\"kind\": \"kind" + k + "\", " + limit(100 * share, " %"));
        }
        for (int k = 0; k < COMPONENTS.size(); k++) {
            for (int of = 0; of < COMPONENTS.size(); of++) {
                if (k != of) {
                    all.add("\"property\": \"" + properties.get(k) + "\", \"per\": {\"property\": \""
                            + properties.get(of) + "\"}, " + limit(held(k) / held(of), ""));
                }
            }
        }
        Collections.shuffle(all, random);
        return IntStream.range(0, Math.min(bounds, all.size()))
                .mapToObj(k -> "{\"name\": \"bound " + k + "\", " + all.get(k) + "}")
                .collect(Collectors.joining(",\n"));
    }

    /** A floor up to three per cent below a number, or a ceiling as much above. */
    private String limit(double number, String unit) {
        boolean floor = random.nextBoolean();
        double beside = number * (1 + (floor ? -0.03 : 0.03) * random.nextDouble());
        var written = String.format(Locale.ROOT, "%.4f", beside);
        return "\"" + (floor ? "min" : "max") + "\": " + (unit.isEmpty() ? written : "\"" + written + unit + "\"");
    }

    private static String decimal(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
