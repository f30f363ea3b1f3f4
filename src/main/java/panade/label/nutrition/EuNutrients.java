package panade.label.nutrition;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import panade.quantity.Decimal;

/**
 * The lines of a label in the European Union, in the order of Regulation (EU) 1169/2011, Annex XV; reference intakes of
 * Annex XIII (from memory).
 */
public final class EuNutrients {
    /** Vitamins and minerals that are rounded to three figures, not two (the guidance, from memory). */
    private static final Set<String> THREE_FIGURES = Set.of("VITA", "FOL", "CLD", "CA", "P", "MG", "ID", "K");

    /** Tagname, name, unit, reference value of Annex XIII, weight of the tagname's unit in the label's. */
    private static final String[][] VITAMINS = {
        {"VITA", "vitamin A", "\u00b5g", "800", "1"},
        {"VITD", "vitamin D", "\u00b5g", "5", "1"},
        {"VITE", "vitamin E", "mg", "12", "1"},
        {"VITK", "vitamin K", "\u00b5g", "75", "1"},
        {"VITC", "vitamin C", "mg", "80", "1"},
        {"THIA", "thiamin", "mg", "1.1", "1"},
        {"RIBF", "riboflavin", "mg", "1.4", "1"},
        {"NIAEQ", "niacin", "mg", "16", "1"},
        {"VITB6A", "vitamin B6", "mg", "1.4", "1"},
        {"FOL", "folic acid", "\u00b5g", "200", "1"},
        {"VITB12", "vitamin B12", "\u00b5g", "2.5", "1"},
        {"BIOT", "biotin", "\u00b5g", "50", "1"},
        {"PANTAC", "pantothenic acid", "mg", "6", "1"},
        {"K", "potassium", "mg", "2000", "1"},
        {"CLD", "chloride", "mg", "800", "1"},
        {"CA", "calcium", "mg", "800", "1"},
        {"P", "phosphorus", "mg", "700", "1"},
        {"MG", "magnesium", "mg", "375", "1"},
        {"FE", "iron", "mg", "14", "1"},
        {"ZN", "zinc", "mg", "10", "1"},
        {"CU", "copper", "mg", "1", "1"},
        {"MN", "manganese", "mg", "2", "0.001"},
        {"SE", "selenium", "\u00b5g", "55", "1"},
        {"ID", "iodine", "\u00b5g", "150", "1"},
    };

    private static final Content CARBOHYDRATE =
            Content.firstOf(Content.sum("CHOAVL", "1"), Content.sum("CHOCDF", "1", "FIBTG", "-1"));

    /** Salt is sodium times 2.5; sodium is in mg. */
    private static final Content SALT = Content.of(Content.sum("NA", "0.0025"));

    private EuNutrients() {}

    /** All lines, energy first. */
    public static List<Nutrient> all() {
        var lines = new ArrayList<Nutrient>();
        lines.add(line("ENERC kJ", "energy", 0, "kJ", Energy.EU_KILOJOULES, EuRounding.ENERGY, "8400"));
        lines.add(line("ENERC", "", 0, "kcal", Energy.EU_KILOCALORIES, EuRounding.ENERGY, "2000"));
        lines.add(line("FAT", "fat", 0, "g", Content.of("FAT"), EuRounding.GRAMS, "70"));
        lines.add(line("FASAT", "of which saturates", 1, "g", Content.of("FASAT"), EuRounding.SATURATES, "20"));
        lines.add(line("CHOAVL", "carbohydrate", 0, "g", CARBOHYDRATE, EuRounding.GRAMS, "260"));
        lines.add(line("SUGAR", "of which sugars", 1, "g", Content.of("SUGAR"), EuRounding.GRAMS, "90"));
        lines.add(fibre());
        lines.add(line("PROCNT", "protein", 0, "g", Content.of("PROCNT"), EuRounding.GRAMS, "50"));
        lines.add(line("NA", "salt", 0, "g", SALT, EuRounding.SALT, "6"));
        for (var each : VITAMINS) {
            lines.add(vitamin(each[0], each[1], each[2], each[3], each[4]));
        }
        return List.copyOf(lines);
    }

    private static Nutrient line(
            String id, String name, int level, String unit, Content content, RoundingRule rounding, String intake) {
        return new Nutrient(id, name, level, unit, content, rounding::print, null, UsRounding.PERCENT, true)
                .daily(intake, UsRounding.PERCENT);
    }

    private static Nutrient fibre() {
        var content = Content.of("FIBTG");
        return new Nutrient(
                "FIBTG", "fibre", 0, "g", content, EuRounding.GRAMS::print, null, UsRounding.PERCENT, false);
    }

    private static Nutrient vitamin(String id, String name, String unit, String intake, String weight) {
        int figures = THREE_FIGURES.contains(id) ? 3 : 2;
        return new Nutrient(
                id,
                name,
                0,
                unit,
                Content.of(Content.sum(id, weight)),
                amount -> EuRounding.significant(amount, figures),
                Decimal.of(intake),
                UsRounding.PERCENT,
                false);
    }
}
