package panade.harden;

import java.util.List;
import java.util.Random;

/** Words that stand where nobody expects them. */
final class Hostile {
    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "-1",
            "1",
            "1e9",
            "1E-9",
            "1e400",
            "1e-400",
            "1e999999999",
            "1e-999999999",
            "-1e2147483648",
            "9".repeat(400),
            "0." + "0".repeat(300) + "1",
            "1e18",
            "0.1e-17",
            "3.",
            ".5",
            "00012",
            "0x10",
            "1_000",
            "1,5",
            "NaN",
            "Infinity",
            "1e",
            "--3",
            "\u0663",
            "\uff11",
            "99.99999999999999",
            "100.00000000000001",
            "9223372036854775808",
            "1/3");

    private static final List<String> UNITS = List.of(
            "%",
            "kg",
            "g",
            "lb",
            "mg/100g",
            "mg",
            "t",
            "oz",
            "/lb",
            "/kg",
            "ppm",
            "kcal/100g",
            "g/g",
            "mg/g",
            "mg/serving",
            "\u00b5g",
            "USD/kg",
            "stone",
            "%%",
            "kg kg",
            "\u00a0%");

    private static final List<String> NAMES = List.of(
            "",
            " ",
            "water",
            "pea",
            "soy",
            "oil",
            "mix",
            "soak",
            "FAT",
            "PROCNT",
            "NA",
            "ENERC",
            "bite",
            "hold",
            "texturate",
            "fat",
            "min",
            "max",
            "property",
            "kind",
            "ingredient",
            "stage",
            "within",
            "per",
            "sum",
            "bounds",
            "brief.json",
            "rules.json",
            "made.json",
            "ingredients.json",
            "prices.csv",
            ".",
            "..",
            "/",
            "/dev/null",
            "~",
            "nul",
            "\u0000",
            "con\u0007",
            "\u001b[2J",
            "\u202eabc",
            "\ud83e\uddc8",
            "\ufeff",
            "\ufffe",
            "I\u0307",
            "\u0131",
            "stra\u00dfe",
            "a\u0301",
            "null",
            "true",
            "[]",
            "{}",
            "\"",
            "'",
            "\\",
            "\\u0000",
            ",",
            ";",
            "\t",
            "\r\n",
            "=1+1",
            "${x}",
            "%s%n",
            "<a>",
            "&amp;",
            "]]>",
            "a".repeat(3000),
            "//",
            "/*",
            "*/",
            "#",
            "@");

    private Hostile() {}

    static String number(Random random) {
        return NUMBERS.get(random.nextInt(NUMBERS.size()));
    }

    static String name(Random random) {
        return NAMES.get(random.nextInt(NAMES.size()));
    }

    static String word(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> number(random);
            case 1 -> number(random) + " " + UNITS.get(random.nextInt(UNITS.size()));
            default -> name(random);
        };
    }

    /** Another value, often one that is nearly what was there. */
    static String value(Random random, String was) {
        return switch (random.nextInt(6)) {
            case 0 -> was.replaceAll("[0-9.]+", number(random).replace("\\", "").replace("$", ""));
            case 1 ->
                was.replaceAll(
                        "[^0-9. ]+", UNITS.get(random.nextInt(UNITS.size())).replace("\\", ""));
            case 2 -> "-" + was;
            case 3 -> was + random.nextInt(10);
            default -> word(random);
        };
    }
}
